import { createSecretKey, hkdfSync, type KeyObject } from 'node:crypto';

/** What is derived from the one key of the house, each for one use alone. */
export type KeyUse = 'seal' | 'key-id' | 'sign-in' | 'device-code' | 'attempts';

/**
 * Reads a key of 32 bytes written as 64 hexadecimal digits or as base64 (either alphabet, padded
 * or not). Answers null for anything else. A KeyObject prints nothing of its content, so that the
 * key cannot slip into a log.
 */
export function readKey(text: string): KeyObject | null {
	const trimmed = text.trim();
	if (/^[0-9a-f]{64}$/i.test(trimmed)) return createSecretKey(Buffer.from(trimmed, 'hex'));
	if (!/^[A-Za-z0-9+/_-]{43}=?$/.test(trimmed)) return null;
	const bytes = Buffer.from(trimmed, 'base64');
	return bytes.length === 32 ? createSecretKey(bytes) : null;
}

/** HKDF with SHA-256 (RFC 5869): one key to keep, and no use of it can reveal another. */
export function deriveKey(key: KeyObject, use: KeyUse, lengthBytes = 32): Buffer {
	return Buffer.from(hkdfSync('sha256', key, 'breathmark', `breathmark/1/${use}`, lengthBytes));
}
