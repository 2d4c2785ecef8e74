const NAMES: ReadonlySet<string> = new Set(['localhost', '127.0.0.1', '[::1]']);

/** Whether whoever asks sits at the computer that runs the server, as far as the address tells. */
export const isThisComputer = ({ hostname }: URL): boolean => NAMES.has(hostname);
