import { createHash } from 'node:crypto';

/* What is made up about somebody is the same each time it is made up for the same day. */

type Seed = readonly (string | number)[];

/** A share from 0 up to 1 that looks like chance. */
export const chance = (...of: Seed): number => digest(of).readUInt32BE() / 2 ** 32;

/** One of the numbers from -most to most, evenly. */
export const about = (most: number, ...of: Seed): number => (chance(...of) * 2 - 1) * most;

/** An id as a phone makes one at random (version 4 by its marks, RFC 9562). */
export function madeUpId(...of: Seed): string {
	const bytes = digest(of).subarray(0, 16);
	bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x40, 6);
	bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
	return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

const digest = (of: Seed): Buffer => createHash('sha256').update(JSON.stringify(of)).digest();
