// The edges of the group's band can be dragged; the forms work without script.
export const csr = true;
