import { afterAll, beforeAll, expect, it } from 'vitest';
import { openMail } from '$lib/server/mail.ts';
import { mailServer } from './mail-server.ts';

// Our own rules, no source. RFC 5321 says how the letter travels.

let server: Awaited<ReturnType<typeof mailServer>>;
beforeAll(async () => {
	server = await mailServer();
});
afterAll(() => server.close());

const open = (smtpUrl = server.url) => {
	const reports: string[] = [];
	const mail = openMail({
		smtpUrl,
		from: 'Lantern Street <coach@example.org>',
		report: (line) => reports.push(line)
	});
	return { mail, reports };
};

it('a letter reaches the server as it was written', async () => {
	const { mail, reports } = open();
	const letter = { to: 'ana+one@example.org', subject: 'A new password', text: 'Hello\n\nZoë' };
	mail.post(async () => letter);
	await mail.close();
	expect(reports).toEqual([]);
	expect(server.letters).toHaveLength(1);
	const [{ from, to, data } = { from: '', to: '', data: '' }] = server.letters;
	expect([from, to]).toEqual(['coach@example.org', 'ana+one@example.org']);
	expect(data).toContain('From: Lantern Street <coach@example.org>');
	expect(data).toContain('Subject: A new password');
	expect(data).toContain('Hello');
});

it('nothing is sent when there is nothing to say', async () => {
	const before = server.letters.length;
	const { mail } = open();
	mail.post(async () => null);
	await mail.close();
	expect(server.letters).toHaveLength(before);
});

it('whoever posts does not wait', async () => {
	const { mail } = open();
	const { promise, resolve } = Promise.withResolvers<null>();
	mail.post(() => promise);
	resolve(null);
	await mail.close();
});

it.each([
	['a server that knows no such person', () => server.url],
	['a server that is not there', () => 'smtp://127.0.0.1:1']
])('%s is reported in one line without an address', async (_, url) => {
	const { mail, reports } = open(url());
	mail.post(async () => ({ to: 'nobody@example.org', subject: 'a', text: 'b' }));
	await mail.close();
	expect(reports).toHaveLength(1);
	expect(reports[0]).toMatch(/^mail: [A-Z]+( \d+)?$/);
});

it('no line of a letter can become a line of its head', async () => {
	const { mail } = open();
	mail.post(async () => ({
		to: 'ana@example.org',
		subject: 'a\r\nBcc: eve@example.org',
		text: 'b'
	}));
	await mail.close();
	expect(server.letters.at(-1)?.to).toBe('ana@example.org');
	expect(server.letters.at(-1)?.data).not.toMatch(/^Bcc:/m);
});
