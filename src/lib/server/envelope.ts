import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';

/*
 * A sealed value is base64 of: version (1 byte), key id (8), nonce (12), ciphertext, tag (16).
 * AES-256-GCM with a random 96-bit nonce (NIST SP 800-38D, 8.2.2: at most 2^32 values a key). (M)
 */
const VERSION = 1;
const KEY_ID_BYTES = 8;
const HEADER_BYTES = 1 + KEY_ID_BYTES;
const NONCE_BYTES = 12;
const TAG_BYTES = 16;

/** Where a sealed value belongs. It opens nowhere else. */
export interface Place {
	readonly table: string;
	/** The runner whose row it is, or 'house'. */
	readonly owner: string;
	readonly row: string;
}

export interface SealingKey {
	/** 16 hexadecimal digits; tells keys apart and reveals nothing of them. */
	readonly id: string;
	readonly bytes: Buffer;
}

/** Encrypts a text for one place. */
export function wrap(key: SealingKey, place: Place, text: string): string {
	const header = Buffer.concat([Buffer.of(VERSION), Buffer.from(key.id, 'hex')]);
	const nonce = randomBytes(NONCE_BYTES);
	const cipher = createCipheriv('aes-256-gcm', key.bytes, nonce, { authTagLength: TAG_BYTES });
	cipher.setAAD(boundTo(header, place));
	const secret = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
	return Buffer.concat([header, nonce, secret, cipher.getAuthTag()]).toString('base64');
}

/** Decrypts a text for its place, or answers null: another key, another place, or a changed byte. */
export function unwrap(key: SealingKey, place: Place, sealed: string): string | null {
	const bytes = Buffer.from(sealed, 'base64');
	if (bytes.length < HEADER_BYTES + NONCE_BYTES + TAG_BYTES || bytes[0] !== VERSION) return null;
	// Base64 forgives stray characters; what was changed is refused all the same.
	if (bytes.toString('base64') !== sealed) return null;
	const header = bytes.subarray(0, HEADER_BYTES);
	if (header.toString('hex', 1) !== key.id) return null;
	const nonce = bytes.subarray(HEADER_BYTES, HEADER_BYTES + NONCE_BYTES);
	const decipher = createDecipheriv('aes-256-gcm', key.bytes, nonce, { authTagLength: TAG_BYTES });
	decipher.setAAD(boundTo(header, place));
	decipher.setAuthTag(bytes.subarray(-TAG_BYTES));
	try {
		const secret = bytes.subarray(HEADER_BYTES + NONCE_BYTES, -TAG_BYTES);
		return decipher.update(secret, undefined, 'utf8') + decipher.final('utf8');
	} catch {
		return null;
	}
}

/** JSON keeps the three parts apart: no two places give the same bytes. */
function boundTo(header: Buffer, { table, owner, row }: Place): Buffer {
	return Buffer.concat([header, Buffer.from(JSON.stringify([table, owner, row]), 'utf8')]);
}
