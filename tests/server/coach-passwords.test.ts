import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import { openMail, type Mail } from '$lib/server/mail.ts';
import * as resets from '$lib/server/password-resets.ts';
import * as sessions from '$lib/server/sessions.ts';
import { Browser, ORIGIN } from './browser.ts';
import { from, PASSWORD, signedIn } from './coach.ts';
import { DATABASES, emptyDatabase, inHouse, MINUTE } from './in-house.ts';
import { mailServer } from './mail-server.ts';
import { migrate } from '$lib/server/database/migrate.ts';

// Our own rules, no source.

const NEXT = 'four green umbrellas';
const run = promisify(execFile);

describe.each(DATABASES)("a coach's password on %s", (type) => {
	const here = inHouse(type);
	const coach = (email: string) => signedIn(here.database, email);
	const opens = async (email: string, password: string) => {
		const visitor = new Browser(here.database);
		const typed = { email, password, stay: true };
		return typeof (await visitor.auth.signInCoach(typed, from(visitor))) === 'object';
	};

	beforeAll(async () => {
		const { coachId } = await coach('host@example.org');
		await houseSettings.setSignUp(here.database, coachId, 'open');
	});

	it('is changed by who knows it: other devices are signed out, this one is not', async () => {
		const ana = await coach('ana@example.org');
		const other = new Browser(here.database);
		const typed = { email: 'ana@example.org', password: PASSWORD, stay: true };
		await other.auth.signInCoach(typed, from(other));
		const { token } = await resets.create(here.database, ana.coachId, Date.now());
		expect(await ana.browser.auth.changePassword(ana, PASSWORD, NEXT, Date.now())).toBe('changed');
		expect((await ana.browser.auth.asking(ana.browser.headers())).coach?.coachId).toBe(ana.coachId);
		expect((await other.auth.asking(other.headers())).coach).toBeNull();
		expect(await opens('ana@example.org', PASSWORD)).toBe(false);
		expect(await opens('ana@example.org', NEXT)).toBe(true);
		// A link from before is as old as the old password.
		expect(await resets.peek(here.database, token, Date.now())).toBeNull();
		const history = await audit.list(here.database, ana.coachId);
		expect(history.map(({ what }) => what)).toContain('password.changed');
		expect(JSON.stringify(history)).not.toContain('@');
	});

	it('is not changed by who does not know it, however often they try', async () => {
		const bo = await coach('bo@example.org');
		const change = (current: string, now = Date.now()) =>
			bo.browser.auth.changePassword(bo, current, NEXT, now);
		const answers = [];
		for (let i = 0; i < 11; i += 1) answers.push(await change('not this one'));
		expect(new Set(answers.slice(0, 10))).toEqual(new Set(['wrong']));
		expect(answers[10]).toBe('too-many');
		expect(await change(PASSWORD)).toBe('too-many');
		expect(await change(PASSWORD, Date.now() + 16 * MINUTE)).toBe('changed');
	});

	it('is not changed to one that is easy to guess', async () => {
		const cy = await coach('cy@example.org');
		const change = (next: string) => cy.browser.auth.changePassword(cy, PASSWORD, next, Date.now());
		expect(await change('Odile Marr 1')).toEqual({ issue: 'is-you' });
		expect(await change('short')).toEqual({ issue: 'too-short' });
		expect(await opens('cy@example.org', PASSWORD)).toBe(true);
	});

	it('is set anew by a link, once; every device is signed out', async () => {
		const di = await coach('di@example.org');
		const { auth } = new Browser(here.database);
		const [one, two] = await Promise.all(
			[1, 2].map(() => resets.create(here.database, di.coachId, Date.now()))
		);
		expect(await auth.resetPassword(one?.token ?? '', 'short', Date.now())).toEqual({
			issue: 'too-short'
		});
		expect(await auth.resetPassword(one?.token ?? '', NEXT, Date.now())).toBe('changed');
		expect((await auth.asking(di.browser.headers())).coach).toBeNull();
		expect(await opens('di@example.org', NEXT)).toBe(true);
		for (const { token } of [one, two].filter((link) => link !== undefined)) {
			expect(await auth.resetPassword(token, PASSWORD, Date.now())).toBe('no-link');
		}
		expect(await opens('di@example.org', NEXT)).toBe(true);
	});

	it('is set by one of two who use a link at once', async () => {
		const ed = await coach('ed@example.org');
		const { auth } = new Browser(here.database);
		const { token } = await resets.create(here.database, ed.coachId, Date.now());
		const answers = await Promise.all(
			[NEXT, 'nine quiet harbours'].map((next) => auth.resetPassword(token, next, Date.now()))
		);
		expect(answers.sort()).toEqual(['changed', 'no-link']);
	});

	it('is not set by a link that is over, made up, or meant for something else', async () => {
		const fay = await coach('fay@example.org');
		const { auth } = new Browser(here.database);
		const { token, expiresAt } = await resets.create(here.database, fay.coachId, Date.now());
		expect(await auth.resetPassword(token, NEXT, expiresAt)).toBe('no-link');
		for (const made of ['', '%', token.slice(1), `${token}x`]) {
			expect(await auth.resetPassword(made, NEXT, Date.now())).toBe('no-link');
		}
		const kept = await here.database.selectFrom('verification').selectAll().execute();
		expect(JSON.stringify(kept)).not.toContain(token);
	});

	describe('where the house has mail', () => {
		let server: Awaited<ReturnType<typeof mailServer>>;
		let mail: Mail;
		const reports: string[] = [];
		beforeAll(async () => {
			server = await mailServer();
			mail = openMail({
				smtpUrl: server.url,
				from: 'house@example.org',
				report: (line) => reports.push(line)
			});
		});
		afterAll(async () => {
			await mail.close();
			await server.close();
		});
		const asking = async (email: string, address = '192.0.2.7', now = Date.now()) => {
			const visitor = new Browser(here.database, ORIGIN, mail);
			const write = (link: string) => ({ subject: 'New password', text: `Open ${link}` });
			const answer = await visitor.auth.requestReset(email, write, from(visitor, now, address));
			await mail.close();
			return answer;
		};

		it('a link is mailed to the coach, and to nobody for an unknown e-mail', async () => {
			await coach('gil@example.org');
			const before = server.letters.length;
			expect(await asking('gil@example.org')).toBe('asked');
			expect(await asking('unknown@example.org')).toBe('asked');
			expect(server.letters.slice(before).map(({ to }) => to)).toEqual(['gil@example.org']);
			const data = (server.letters.at(-1)?.data ?? '').replace(/=\n/g, '').replaceAll('=3D', '=');
			const token = /https:\/\/run\.example\.org\/coach\/reset\?token=([\w-]{43})/.exec(data)?.[1];
			const { auth } = new Browser(here.database);
			expect(await auth.resetPassword(token ?? '', NEXT, Date.now())).toBe('changed');
			expect(reports).toEqual([]);
		});

		it('nobody fills a letter box: three an hour', async () => {
			await coach('hal@example.org');
			const answers = [];
			for (let i = 0; i < 4; i += 1) answers.push(await asking('hal@example.org'));
			expect(answers).toEqual(['asked', 'asked', 'asked', 'too-many']);
			expect(await asking('hal@example.org', '192.0.2.7', Date.now() + 61 * MINUTE)).toBe('asked');
		});

		it('one address asks for twenty an hour, whomever it names', async () => {
			const answers = [];
			for (let i = 0; i < 21; i += 1) {
				answers.push(await asking(`unknown${i}@example.org`, '192.0.2.90'));
			}
			expect(answers.filter((answer) => answer === 'asked')).toHaveLength(20);
			expect(answers.at(-1)).toBe('too-many');
			expect(await asking('unknown@example.org', '192.0.2.91')).toBe('asked');
		});

		it('a letter that does not arrive is reported without the address', async () => {
			await coach('nobody@example.org');
			expect(await asking('nobody@example.org')).toBe('asked');
			expect(reports).toEqual(['mail: EENVELOPE 550']);
		});
	});

	it('without mail nothing is sent, and that is said', async () => {
		const visitor = new Browser(here.database);
		const write = () => ({ subject: '', text: '' });
		expect(await visitor.auth.requestReset('host@example.org', write, from(visitor))).toBe(
			'no-mail'
		);
	});

	it('devices are listed, and each can be signed out', async () => {
		const ida = await coach('ida@example.org');
		const other = new Browser(here.database);
		const typed = { email: 'ida@example.org', password: PASSWORD, stay: false };
		const second = await other.auth.signInCoach(typed, from(other));
		const sessionId: string = Object(second).sessionId;
		const listed = await sessions.list(here.database, ida.coachId, Date.now());
		expect(listed.map(({ id }) => id).sort()).toEqual([ida.sessionId, sessionId].sort());
		const stranger = await coach('jo@example.org');
		const revoke = (coachId: string) =>
			sessions.revoke(here.database, coachId, sessionId, Date.now());
		expect(await revoke(stranger.coachId)).toBe('not-found');
		expect(await revoke(ida.coachId)).toBe('revoked');
		expect((await other.auth.asking(other.headers())).coach).toBeNull();
	});
});

describe.each(DATABASES)('the host of a house on %s', (type) => {
	it('prints a link for a coach while the server runs', async () => {
		const { database, place, drop } = await emptyDatabase(type);
		await migrate(database);
		const ana = await signedIn(database, 'ana+x@example.org');
		const script = join(import.meta.dirname, '../../.setup/reset-password.mjs');
		const print = (email: string) =>
			run(process.execPath, [script, email], {
				env: {
					PATH: process.env.PATH,
					DATA_FOLDER: place.dataFolder,
					DATABASE_URL: place.databaseUrl ?? '',
					ORIGIN
				}
			});
		const { stdout, stderr } = await print(' Ana+X@Example.org');
		expect(stderr).toBe('');
		expect(stdout).not.toContain('@');
		const token = /https:\/\/run\.example\.org\/coach\/reset\?token=(\S+)/.exec(stdout)?.[1] ?? '';
		expect(await ana.browser.auth.resetPassword(token, NEXT, Date.now())).toBe('changed');
		await expect(print('nobody@example.org')).rejects.toMatchObject({ code: 1, stdout: '' });
		await expect(print('')).rejects.toMatchObject({ code: 1, stdout: '' });
		await drop();
	});
});
