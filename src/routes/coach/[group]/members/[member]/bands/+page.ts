// The edges can be dragged and beats follow what is typed; the forms work without script.
export const csr = true;
