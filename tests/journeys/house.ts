import { spawn, type ChildProcess } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const SERVER = new URL('../../.setup/serve.mjs', import.meta.url).pathname;
const CLOCK = new URL('./shifted-clock.mjs', import.meta.url).href;

interface Opening {
	/** Whole days by which the server's clock is ahead of the machine's. */
	readonly daysAhead?: number;
	readonly minutesAhead?: number;
	readonly key?: string;
	readonly env?: Readonly<Record<string, string>>;
	/** Another build than the usual one: its handler, from `.setup/`. */
	readonly handler?: string;
}

/**
 * The built app, served for one test from a data folder of its own. It can be stopped and opened
 * again on the same data, with another key or with the clock ahead, as a host would.
 */
export class House {
	readonly key = randomBytes(32).toString('hex');
	/** Everything that the server printed, for tests of what never may stand in a log. */
	printed = '';
	port = 0;
	/** True while it is open with another clock or key than at first. */
	isChanged = false;
	#child: ChildProcess | null = null;

	private constructor(
		readonly dataFolder: string,
		readonly handler: string | undefined
	) {}

	static async build(opening: Opening = {}): Promise<House> {
		const house = new House(await mkdtemp(join(tmpdir(), 'breathmark-journey-')), opening.handler);
		house.port = await freePort();
		await house.open(opening);
		return house;
	}

	get url(): string {
		return `http://localhost:${this.port}`;
	}

	async open({ daysAhead = 0, minutesAhead = 0, key = this.key, env = {} }: Opening = {}) {
		const { handler } = this;
		const child = spawn(
			process.execPath,
			['--import', CLOCK, SERVER, ...(handler ? [handler] : [])],
			{
				env: {
					...process.env,
					PORT: String(this.port),
					DATA_FOLDER: this.dataFolder,
					BREATHMARK_KEY: key,
					CLOCK_AHEAD_MS: String((daysAhead * 24 * 60 + minutesAhead) * 60_000),
					...env
				},
				stdio: ['ignore', 'pipe', 'pipe']
			}
		);
		this.#child = child;
		const printedBefore = this.printed.length;
		const print = (chunk: Buffer) => (this.printed += chunk.toString());
		child.stdout?.on('data', print);
		child.stderr?.on('data', print);
		await new Promise<void>((opened, failed) => {
			const printedNow = () => this.printed.slice(printedBefore);
			child.stdout?.on('data', () => printedNow().includes('Breathmark is at') && opened());
			child.once('exit', (code) =>
				failed(new Error(`the server ended (${code}): ${printedNow()}`))
			);
		});
	}

	async close() {
		const child = this.#child;
		this.#child = null;
		if (child === null || child.exitCode !== null) return;
		const ended = new Promise((done) => child.once('exit', done));
		child.kill('SIGTERM');
		await ended;
	}

	/** Stops and opens again, on the same data. */
	async reopen(opening: Opening) {
		await this.close();
		await this.open(opening);
		this.isChanged = Object.keys(opening).length > 0;
	}

	async tearDown() {
		await this.close();
		await rm(this.dataFolder, { recursive: true, force: true });
	}
}

function freePort(): Promise<number> {
	return new Promise((found, failed) => {
		const probe = createServer();
		probe.once('error', failed);
		probe.listen(0, '127.0.0.1', () => {
			const address = probe.address();
			const port = typeof address === 'object' && address !== null ? address.port : 0;
			probe.close(() => found(port));
		});
	});
}
