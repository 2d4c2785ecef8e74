// The button that prints needs script; the page works without.
export const csr = true;
