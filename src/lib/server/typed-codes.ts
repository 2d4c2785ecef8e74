import { createHmac, randomInt } from 'node:crypto';

/** Digits and letters without those that are misread for one another: no 0 O, 1 I L, U V. */
const ALPHABET = '23456789ABCDEFGHJKMNPQRSTWXYZ';
const LENGTH = 8;

/** A new code of eight letters, of 29^8 (5 x 10^11) that there are. */
export const drawCode = (): string =>
	Array.from({ length: LENGTH }, () => ALPHABET[randomInt(ALPHABET.length)]).join('');

/** As it is shown: XXXX-XXXX. */
export const shownCode = (code: string): string => `${code.slice(0, 4)}-${code.slice(4)}`;

/** Small letters, spaces and hyphens are forgiven. */
export const readCode = (typed: string): string => typed.toUpperCase().replace(/[^0-9A-Z]/g, '');

/** Keyed, so that whoever reads the database cannot try all codes. */
export const hashCode = (key: Buffer, code: string): string =>
	createHmac('sha256', key).update(code, 'utf8').digest('base64url');
