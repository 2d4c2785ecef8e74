// The button that prints needs script; the paper works without.
export const csr = true;
