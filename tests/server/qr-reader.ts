/*
 * Reads the text of a clean QR code at level M, without error correction. Written from memory after
 * ISO/IEC 18004:2015: function patterns 6.3, data placement 7.7.3, masks table 10, format 7.9,
 * blocks table 9. Versions 1 to 6.
 */

/** Data codewords of each block at level M, by version. */
const BLOCKS_M: readonly (readonly number[])[] = [
	[],
	[16],
	[28],
	[44],
	[32, 32],
	[43, 43],
	[27, 27, 27, 27]
];

const MASKS: readonly ((row: number, column: number) => boolean)[] = [
	(i, j) => (i + j) % 2 === 0,
	(i) => i % 2 === 0,
	(_, j) => j % 3 === 0,
	(i, j) => (i + j) % 3 === 0,
	(i, j) => (Math.floor(i / 2) + Math.floor(j / 3)) % 2 === 0,
	(i, j) => ((i * j) % 2) + ((i * j) % 3) === 0,
	(i, j) => (((i * j) % 2) + ((i * j) % 3)) % 2 === 0,
	(i, j) => (((i + j) % 2) + ((i * j) % 3)) % 2 === 0
];

/** The mask that level M's format bits carry, XORed with 101010000010010. */
const FORMAT_MASK = 0b101010000010010;
const LEVEL_M = 0b00;

export function readQrCode(isDark: (row: number, column: number) => boolean, size: number): string {
	const version = (size - 17) / 4;
	const mask = maskOf(isDark);
	const bits = placesOf(size)
		.filter(([row, column]) => !isFunction(row, column, size, version))
		.map(([row, column]) => Number(isDark(row, column) !== mask(row, column)));
	return textOf(deinterleaved(bits, version));
}

/** Pairs of columns from the right, upward and downward in turn; the timing column is left out. */
function placesOf(size: number): readonly (readonly [number, number])[] {
	const columns = Array.from({ length: size }, (_, i) => size - 1 - i).filter((one) => one !== 6);
	const pairs = Array.from({ length: columns.length / 2 }, (_, i) =>
		columns.slice(2 * i, 2 * i + 2)
	);
	const down = Array.from({ length: size }, (_, row) => row);
	return pairs.flatMap((pair, i) =>
		(i % 2 === 0 ? down.toReversed() : down).flatMap((row) =>
			pair.map((column) => [row, column] as const)
		)
	);
}

function maskOf(isDark: (row: number, column: number) => boolean) {
	const places = [0, 1, 2, 3, 4, 5, 7].map((column) => [8, column] as const);
	const bits = [...places, [8, 8] as const].map(([row, column]) => Number(isDark(row, column)));
	const first = bits.slice(0, 5).reduce((sum, bit) => sum * 2 + bit, 0) ^ (FORMAT_MASK >> 10);
	if (first >> 3 !== LEVEL_M) throw new Error(`level ${first >> 3}`);
	const mask = MASKS[first & 7];
	if (!mask) throw new Error('no mask');
	return mask;
}

function isFunction(row: number, column: number, size: number, version: number): boolean {
	const nearLeft = column < 9;
	const nearTop = row < 9;
	if (nearLeft && nearTop) return true;
	if (nearTop && column >= size - 8) return true;
	if (nearLeft && row >= size - 8) return true;
	if (row === 6 || column === 6) return true;
	const centre = size - 7;
	return version > 1 && Math.abs(row - centre) <= 2 && Math.abs(column - centre) <= 2;
}

function deinterleaved(bits: readonly number[], version: number): number[] {
	const words = Array.from({ length: Math.floor(bits.length / 8) }, (_, i) =>
		bits.slice(i * 8, i * 8 + 8).reduce((sum, bit) => sum * 2 + bit, 0)
	);
	const blocks = (BLOCKS_M[version] ?? []).map(() => [] as number[]);
	const total = (BLOCKS_M[version] ?? []).reduce((sum, one) => sum + one, 0);
	words.slice(0, total).forEach((word, i) => blocks[i % blocks.length]?.push(word));
	return blocks.flat();
}

/** One segment in byte mode: 0100, a count of 8 bits, the bytes. */
function textOf(words: readonly number[]): string {
	const bits = words.map((word) => word.toString(2).padStart(8, '0')).join('');
	if (bits.slice(0, 4) !== '0100') throw new Error(`mode ${bits.slice(0, 4)}`);
	const count = parseInt(bits.slice(4, 12), 2);
	const bytes = Array.from({ length: count }, (_, i) =>
		parseInt(bits.slice(12 + i * 8, 20 + i * 8), 2)
	);
	return Buffer.from(bytes).toString('utf8');
}
