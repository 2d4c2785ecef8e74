import { expect, it } from 'vitest';
import { qrCode } from '$lib/server/qr-code.ts';
import { readQrCode } from './qr-reader.ts';

const QUIET = 4;

it.each([
	'https://run.example.org/join/AAAAAAAAAAAAAAAAAAAAAA',
	'http://localhost:4173/join/_-x9QkPzR0aB7cDeFgHiJk',
	'https://a-rather-long-name-of-a-club.example.org/join/0123456789abcdefABCDEF'
])('a QR code of %s says just that', (link) => {
	const { size, path } = qrCode(link);
	const dark = new Set(path.match(/M\d+ \d+/g));
	const isDark = (row: number, column: number) => dark.has(`M${column + QUIET} ${row + QUIET}`);
	expect(readQrCode(isDark, size - 2 * QUIET)).toBe(link);
	// ISO/IEC 18004, 9.1 (M): four light modules on every side.
	for (let i = 0; i < size; i += 1) {
		for (const edge of [0, 3, size - 4, size - 1]) {
			expect(dark.has(`M${i} ${edge}`) || dark.has(`M${edge} ${i}`)).toBe(false);
		}
	}
});
