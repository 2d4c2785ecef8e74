// The clock and the chart need script; everything else on the page works without.
export const csr = true;
