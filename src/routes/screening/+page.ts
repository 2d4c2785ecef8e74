// The one page of the first questions with script: it registers the offline copy of itself.
export const csr = true;
