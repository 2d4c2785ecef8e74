// Runners are looked for as one types; it works without script.
export const csr = true;
