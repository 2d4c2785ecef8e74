// A passkey needs script; the password works without.
export const csr = true;
