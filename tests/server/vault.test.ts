import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { unwrap, wrap, type Place } from '$lib/server/envelope.ts';
import { deriveKey } from '$lib/server/keys.ts';
import { openVault, Unreadable, VaultClosed } from '$lib/server/vault.ts';
import { DATABASES, freshKey, inHouse } from './in-house.ts';

const place: Place = { table: 'screening_result', owner: 'runner-1', row: 'row-1' };
const shape = z.strictObject({ status: z.string() });
const content = { status: 'CLEARED_WALK' };

const sealingKey = () => {
	const key = freshKey();
	return { id: deriveKey(key, 'key-id', 8).toString('hex'), bytes: deriveKey(key, 'seal') };
};

describe('a sealed text', () => {
	const key = sealingKey();
	const sealed = wrap(key, place, 'chest pain');

	it('opens in its place', () => {
		expect(unwrap(key, place, sealed)).toBe('chest pain');
		expect(unwrap(key, place, wrap(key, place, ''))).toBe('');
		expect(unwrap(key, place, wrap(key, place, 'Frühstück 🫖'))).toBe('Frühstück 🫖');
	});

	it('never looks the same twice', () => {
		expect(wrap(key, place, 'chest pain')).not.toBe(sealed);
	});

	it.each([
		['table', { ...place, table: 'advice' }],
		['runner', { ...place, owner: 'runner-2' }],
		['row', { ...place, row: 'row-2' }],
		['boundary between runner and row', { ...place, owner: 'runner-1row', row: '-1' }]
	])('does not open after a move to another %s', (_, elsewhere) => {
		expect(unwrap(key, elsewhere, sealed)).toBeNull();
	});

	it('does not open once any byte of it is changed', () => {
		const bytes = Buffer.from(sealed, 'base64');
		for (let i = 0; i < bytes.length; i += 1) {
			const changed = Buffer.from(bytes);
			changed[i] = (changed[i] ?? 0) ^ 1;
			expect(unwrap(key, place, changed.toString('base64'))).toBeNull();
		}
	});

	it.each(['', 'x', sealed.slice(0, -4), `${sealed}AAAA`, ` ${sealed}`, sealed.slice(0, 40)])(
		'does not open when it is cut or grown',
		(text) => expect(unwrap(key, place, text)).toBeNull()
	);

	it('does not open with another key', () => {
		expect(unwrap(sealingKey(), place, sealed)).toBeNull();
		expect(unwrap({ ...sealingKey(), id: key.id }, place, sealed)).toBeNull();
	});

	// AES-256-GCM by the Web Cryptography API (W3C), from the documented layout alone.
	it('is what any AES-256-GCM opens', async () => {
		const bytes = Buffer.from(sealed, 'base64');
		const aad = Buffer.concat([
			bytes.subarray(0, 9),
			Buffer.from('["screening_result","runner-1","row-1"]')
		]);
		const raw = Uint8Array.from(key.bytes);
		const opener = await crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['decrypt']);
		const text = await crypto.subtle.decrypt(
			{ name: 'AES-GCM', iv: bytes.subarray(9, 21), additionalData: aad, tagLength: 128 },
			opener,
			bytes.subarray(21)
		);
		expect(Buffer.from(text).toString()).toBe('chest pain');
	});
});

describe.each(DATABASES)('the vault on %s', (type) => {
	const here = inHouse(type);

	it('gives back what was sealed, in the shape that was asked for', () => {
		const sealed = here.vault.seal(place, content);
		expect(here.vault.unseal(place, sealed, shape)).toEqual(content);
		expect(sealed).not.toContain('CLEARED');
	});

	it('refuses a value that was moved, or that has another shape', () => {
		const sealed = here.vault.seal(place, content);
		expect(() => here.vault.unseal({ ...place, row: 'row-2' }, sealed, shape)).toThrow(Unreadable);
		expect(() => here.vault.unseal(place, sealed, z.strictObject({}))).toThrow(Unreadable);
	});

	it('names the table in its error, never the content', () => {
		const sealed = here.vault.seal(place, content);
		expect(() => here.vault.unseal(place, sealed, z.number())).toThrow(
			/^a sealed value in screening_result cannot be read$/
		);
	});

	it('opens again with the same key', async () => {
		const sealed = here.vault.seal(place, content);
		const again = await openVault(here.database, here.key);
		expect(again.state).toBe('right');
		expect(again.unseal(place, sealed, shape)).toEqual(content);
	});

	it('is closed with another key: nothing is read and nothing is written', async () => {
		const sealed = here.vault.seal(place, content);
		const wrong = await openVault(here.database, freshKey());
		expect(wrong.state).toBe('wrong-key');
		expect(() => wrong.seal(place, content)).toThrow(VaultClosed);
		expect(() => wrong.unseal(place, sealed, shape)).toThrow(VaultClosed);
		expect((await openVault(here.database, here.key)).state).toBe('right');
	});

	it('keeps no key in the database', async () => {
		const rows = await here.database.selectFrom('vault_check').selectAll().execute();
		expect(rows).toHaveLength(1);
		const kept = JSON.stringify(rows);
		const secrets = [here.key.export(), deriveKey(here.key, 'seal')];
		for (const secret of secrets) {
			for (const form of ['hex', 'base64', 'base64url'] as const) {
				expect(kept).not.toContain(secret.toString(form));
			}
		}
	});
});
