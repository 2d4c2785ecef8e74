// Every press counts at once, lengths can be dragged and the picture is drawn; the form works without.
export const csr = true;
