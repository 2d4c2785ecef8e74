import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type AddressInfo, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, afterEach, describe, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'breathmark-serving-'));
const children: ChildProcess[] = [];
afterEach(() => children.splice(0).forEach((child) => child.kill('SIGKILL')));
afterAll(() => rmSync(folder, { recursive: true }));

/** In place of the built app: answers with what reached it, or as slowly or badly as it is asked to. */
const app = `
	process.on('breathmark:stopping', () => console.log('stopping'));
	process.on('sveltekit:shutdown', async () => {
		await new Promise((done) => setTimeout(done, 50));
		console.log('closed');
	});
	export async function handler(request, response, next) {
		if (request.url.startsWith('/none')) return next();
		if (request.url.startsWith('/bad')) throw new Error('broken');
		if (request.url === '/slow') {
			response.write('begun ');
			await new Promise((done) => setTimeout(done, 400));
			return response.end('ended');
		}
		response.end(JSON.stringify({
			protocol: request.headers[process.env.PROTOCOL_HEADER],
			port: process.env.PORT
		}));
	}
`;

interface Start {
	readonly env?: Record<string, string>;
	readonly source?: string;
	readonly hasChannel?: boolean;
}

function serve({ env = {}, source = app, hasChannel = false }: Start = {}) {
	const file = join(folder, `${children.length}-${Math.floor(performance.now())}.mjs`);
	writeFileSync(file, source);
	const args = [join(import.meta.dirname, '../../.setup/serve.mjs'), pathToFileURL(file).href];
	const child = spawn(process.execPath, args, {
		env: { PATH: process.env.PATH, PORT: '0', ...env },
		stdio: ['ignore', 'pipe', 'pipe', ...(hasChannel ? (['ipc'] as const) : [])]
	});
	children.push(child);
	const out: string[] = [];
	const err: string[] = [];
	child.stdout?.on('data', (chunk) => out.push(String(chunk)));
	child.stderr?.on('data', (chunk) => err.push(String(chunk)));
	// A child whose channel we closed ourselves exits without the event that it is all over.
	const streams = [child.stdout, child.stderr].filter((stream) => stream !== null);
	const over = [once(child, 'exit'), ...streams.map((stream) => once(stream, 'end'))];
	const ended = Promise.all(over).then(() => ({
		code: child.exitCode,
		out: out.join(''),
		err: err.join('')
	}));
	const opened = new Promise<string>((resolve) => {
		child.stdout?.on('data', () => {
			const address = /http:\/\/localhost:\d+/.exec(out.join(''))?.[0];
			if (address) resolve(address);
		});
	});
	return { child, ended, opened };
}

describe('starting', () => {
	test('prints its address, in one line', async () => {
		const { child, opened, ended } = serve();
		await opened;
		child.kill('SIGTERM');
		expect((await ended).out.split('\n')[0]).toMatch(/^Breathmark is at http:\/\/localhost:\d+$/);
	});

	test('the app learns the port that was found', async () => {
		const address = await serve().opened;
		expect(await (await fetch(address)).json()).toMatchObject({ port: new URL(address).port });
	});

	test.each([
		['PORT', 'many', 'PORT is "many"'],
		['PORT', '65536', 'PORT is "65536"'],
		['HOST', '192.0.2.1', 'HOST is "192.0.2.1"'],
		['ORIGIN', 'run.example.org', 'ORIGIN is "run.example.org"'],
		['ORIGIN', 'https://run.example.org/app', 'ORIGIN is "https://run.example.org/app"']
	])('%s=%s is refused in one line', async (name, value, begin) => {
		const { code, out, err } = await serve({ env: { [name]: value } }).ended;
		expect({ code, out }).toEqual({ code: 1, out: '' });
		expect(err.trimEnd().split('\n')).toEqual([expect.stringContaining(begin)]);
	});

	test('a port that is taken is refused in one line, before the app is touched', async () => {
		const port = await take();
		const source = `console.log('touched'); export const handler = () => {};`;
		const { code, out, err } = await serve({ env: { PORT: String(port) }, source }).ended;
		expect({ code, out }).toEqual({ code: 1, out: '' });
		expect(err.trimEnd().split('\n')).toEqual([expect.stringContaining(`Port ${port} is taken`)]);
	});

	test('what the app refuses for is one line, what it breaks with is told whole', async () => {
		const refusing = `throw Object.assign(new Error('No key.'), { name: 'StartRefused' });`;
		expect(await serve({ source: refusing }).ended).toMatchObject({ code: 1, err: 'No key.\n' });
		const { code, err } = await serve({ source: `throw new Error('broken')` }).ended;
		expect(code).toBe(1);
		expect(err).toMatch(/broken\n\s+at /);
	});
});

describe('answering', () => {
	test('what comes straight over http is http, whatever it pretends', async () => {
		const address = await serve().opened;
		const protocolFor = async (forwarded?: string) => {
			const headers = forwarded ? { 'x-forwarded-proto': forwarded } : undefined;
			const answer = (await (await fetch(address, { headers })).json()) as { protocol: string };
			return answer.protocol;
		};
		expect(await protocolFor()).toBe('http');
		expect(await protocolFor('gopher:')).toBe('http');
		expect(await protocolFor('https, http')).toBe('https');
	});

	test.each([
		['/none', 404],
		['/bad', 500]
	])('%s, which the app does not answer, is answered with a page and %i', async (path, status) => {
		const { opened, child, ended } = serve();
		const answer = await fetch(`${await opened}${path}?secret`);
		expect(answer.status).toBe(status);
		expect(answer.headers.get('content-type')).toContain('text/html');
		child.kill('SIGTERM');
		expect((await ended).err).not.toContain('secret');
	});
});

describe('stopping', () => {
	test.each(['SIGTERM', 'SIGINT', 'SIGHUP'] as const)(
		'%s lets a request end, then the app close, and ends well',
		async (signal) => {
			const { child, opened, ended } = serve();
			const answer = await fetch(`${await opened}/slow`);
			child.kill(signal);
			child.kill(signal);
			expect(await answer.text()).toBe('begun ended');
			const { code, out } = await ended;
			expect(code).toBe(0);
			expect(out.split('\n').slice(1)).toEqual(['stopping', 'closed', '']);
		}
	);

	test('the server ends when whoever started it is gone', async () => {
		const { child, opened, ended } = serve({ hasChannel: true });
		await opened;
		child.disconnect();
		expect(await ended).toMatchObject({ code: 0, out: expect.stringContaining('closed') });
	});
});

const takers: Server[] = [];
afterEach(() => takers.splice(0).forEach((server) => server.close()));

function take(): Promise<number> {
	return new Promise((resolve) => {
		const server = createServer();
		takers.push(server);
		server.listen(0, '127.0.0.1', () => resolve((server.address() as AddressInfo).port));
	});
}
