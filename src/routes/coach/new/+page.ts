// Only the browser knows the time zone that a coach most likely means; without script it is picked.
export const csr = true;
