// It keeps time, which needs script.
export const csr = true;
