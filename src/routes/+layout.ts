// Pages are plain documents unless one says that it needs script.
export const csr = false;
