import { createHash, randomBytes } from 'node:crypto';

/** 256 bits, for a link: nobody guesses one, so a plain hash keeps it. */
export function makeToken(): { token: string; hash: string } {
	const token = randomBytes(32).toString('base64url');
	return { token, hash: hashToken(token) };
}

/** What is stored of a link, so that whoever reads the database cannot use it. */
export function hashToken(token: string): string {
	return createHash('sha256').update(token, 'utf8').digest('base64url');
}
