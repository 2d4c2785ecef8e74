import { commonPasswords } from './common-passwords.ts';

/** Characters, not bytes. Length is the only rule of form: any character counts, spaces too. */
export const PASSWORD_SHORTEST = 10;
export const PASSWORD_LONGEST = 128;

export type PasswordIssue = 'too-short' | 'too-long' | 'is-you' | 'too-common';

/** Whose password it is going to be. */
export interface Owner {
	readonly email: string;
	readonly name: string;
}

/** Why this cannot be that coach's password, or null. Common practice, no source. */
export function passwordIssue(password: string, { email, name }: Owner): PasswordIssue | null {
	const length = [...password].length;
	if (length < PASSWORD_SHORTEST) return 'too-short';
	if (length > PASSWORD_LONGEST) return 'too-long';
	const folded = foldPassword(password);
	const own = [email, email.split('@')[0] ?? '', name].map(foldPassword).filter(Boolean);
	if (own.includes(folded)) return 'is-you';
	if (new Set(password).size <= 2 || commonPasswords.has(folded)) return 'too-common';
	return null;
}

/**
 * Without capitals, spaces and marks, and without the numbers that people put at the end; what is
 * numbers alone stays.
 * @example foldPassword('Pass Word-2026') // 'password'
 */
export function foldPassword(text: string): string {
	const bare = text
		.normalize('NFKC')
		.toLowerCase()
		.replace(/[^\p{L}\p{M}\p{N}]/gu, '');
	return bare.replace(/\p{N}+$/u, '') || bare;
}
