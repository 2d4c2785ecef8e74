import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readEnvironment } from '$lib/server/environment.ts';
import { closeHouse, house } from '$lib/server/house.ts';
import { openHouse } from '$lib/server/open-house.ts';
import { StartRefused } from '$lib/server/start-refused.ts';
import { standing } from '$lib/server/standing.ts';
import { NOW } from './in-house.ts';
import { mailServer } from './mail-server.ts';

const KEY = '11'.repeat(32);
const OTHER = '22'.repeat(32);

let folder: string;
let variables: Record<string, string>;
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'breathmark-house-'));
	variables = { DATA_FOLDER: join(folder, 'data'), XDG_CONFIG_HOME: join(folder, 'config') };
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const open = (more: Record<string, string> = {}) =>
	openHouse(readEnvironment({ ...variables, ...more }), () => undefined as never);

describe('a house', () => {
	it('sends what is on its way before it closes', async () => {
		const server = await mailServer();
		const sending = { SMTP_URL: server.url, MAIL_FROM: 'house@example.org' };
		const opened = await open({
			BREATHMARK_KEY: KEY,
			ORIGIN: 'https://run.example.org',
			...sending
		});
		const [headers, address, now] = [new Headers(), '192.0.2.7', Date.now()];
		const said = { name: 'Ana', qualification: null, email: 'ana@example.org' };
		const from = { headers, address, now };
		await opened.auth.signUpCoach({ ...said, password: 'seven blue kettles' }, null, from);
		const write = (link: string) => ({ subject: 'New password', text: link });
		expect(await opened.auth.requestReset(said.email, write, from)).toBe('asked');
		await opened.close();
		expect(server.letters.map(({ to }) => to)).toEqual(['ana@example.org']);
		await server.close();
	});

	it('opens on an empty folder and finds everything again', async () => {
		const first = await open();
		expect(first.vault.state).toBe('right');
		const signed = await first.auth.signInAnonymous(new Headers());
		await first.close();
		const second = await open();
		expect(second.vault.state).toBe('right');
		const users = await second.database.selectFrom('user').select('id').execute();
		expect(users.map(({ id }) => id)).toEqual([signed.runnerId]);
		await second.close();
	});

	it('keeps its key out of the data folder', async () => {
		await (await open()).close();
		expect(
			readdirSync(join(folder, 'data')).filter((name) => !/^breathmark\.sqlite/.test(name))
		).toEqual([]);
		expect(existsSync(join(folder, 'config', 'breathmark', 'key'))).toBe(true);
	});

	it('makes no key file when it is given a key', async () => {
		await (await open({ BREATHMARK_KEY: KEY })).close();
		expect(existsSync(join(folder, 'config'))).toBe(false);
	});

	it('refuses to keep its key where backups would copy both', async () => {
		const inside = { XDG_CONFIG_HOME: join(folder, 'data') };
		await expect(open(inside)).rejects.toThrow(StartRefused);
		await expect(open(inside)).rejects.toThrow(/lies in the data folder/);
	});

	it('starts with the wrong key: sign-in works, health data stays shut', async () => {
		await (await open({ BREATHMARK_KEY: KEY })).close();
		const shut = await open({ BREATHMARK_KEY: OTHER });
		expect(shut.vault.state).toBe('wrong-key');
		const { runnerId } = await shut.auth.signInAnonymous(new Headers());
		expect(await standing(shut.database, shut.vault, runnerId, NOW)).toMatchObject({
			allowed: false,
			fault: 'vault'
		});
		await shut.close();
		const right = await open({ BREATHMARK_KEY: KEY });
		expect(right.vault.state).toBe('right');
		await right.close();
	});
});

describe('the house of the process', () => {
	beforeEach(() => {
		for (const [name, text] of Object.entries(variables)) vi.stubEnv(name, text);
		for (const name of ['DATABASE_URL', 'BREATHMARK_KEY', 'ORIGIN', 'PORT']) vi.stubEnv(name, '');
	});
	afterEach(async () => {
		await closeHouse();
		vi.unstubAllEnvs();
	});

	it('is not opened by importing it', () => {
		expect(readdirSync(folder)).toEqual([]);
	});

	it('is opened once, also when several ask at once', async () => {
		const [one, other] = await Promise.all([house(), house()]);
		expect(one).toBe(other);
		expect(await house()).toBe(one);
	});

	it('that was refused is tried again', async () => {
		vi.stubEnv('BREATHMARK_KEY', 'no key');
		await expect(house()).rejects.toThrow(StartRefused);
		vi.stubEnv('BREATHMARK_KEY', KEY);
		expect((await house()).vault.state).toBe('right');
	});

	it('says in one line when the key is another one, without the key', async () => {
		await (await open({ BREATHMARK_KEY: OTHER })).close();
		const said = vi.spyOn(console, 'error').mockImplementation(() => {});
		vi.stubEnv('BREATHMARK_KEY', KEY);
		await house();
		expect(said.mock.calls).toEqual([
			[
				'This database was sealed with another key: health data stays shut until the right key is back.'
			]
		]);
		said.mockRestore();
	});
});
