// The clock needs script; the form works without.
export const csr = true;
