import { createHash } from 'node:crypto';

/** Tells one runner from another on a phone, and nothing else: no address and no log has it. */
export const runnerKeyOf = (runnerId: string): string =>
	createHash('sha256').update(runnerId).digest('base64url');
