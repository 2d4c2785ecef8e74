// A pulse is measured in the browser; what it cannot do stands on the page without script too.
export const csr = true;
