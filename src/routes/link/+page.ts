// Passkeys need script; the code works without.
export const csr = true;
