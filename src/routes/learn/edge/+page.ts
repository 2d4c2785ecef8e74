// The clock needs script; everything else on the page works without.
export const csr = true;
