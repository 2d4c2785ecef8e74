import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { defineConfig } from '@playwright/test';
import { findChromium } from '../.setup/chromium.mjs';

// Every worker reads this file again; what the first reading decided reaches them by the environment.
const isFirstReading = process.env.JOURNEYS_PORT === undefined;
process.env.JOURNEYS_PORT ??= String(await freePort());
process.env.JOURNEYS_DATA ??= mkdtempSync(join(tmpdir(), 'breathmark-journeys-'));
const { JOURNEYS_PORT: port, JOURNEYS_DATA: dataFolder } = process.env;
if (isFirstReading) process.on('exit', () => rmSync(dataFolder, { recursive: true, force: true }));

const address = `http://localhost:${port}`;

/** What the server of the journeys must not take over from whoever runs them. */
const unset = { ORIGIN: '', DATABASE_URL: '', HOST: '', PROTOCOL_HEADER: '' };

export default defineConfig({
	testDir: 'journeys',
	outputDir: '../test-results',
	fullyParallel: true,
	forbidOnly: process.env.CI !== undefined,
	workers: 2,
	retries: 0,
	timeout: 60_000,
	reporter: [['line'], ['json', { outputFile: '../reports/journeys.json' }]],
	use: {
		baseURL: address,
		browserName: 'chromium',
		locale: 'en-GB',
		trace: 'off',
		screenshot: 'only-on-failure',
		launchOptions: {
			executablePath: findChromium(),
			args: [
				// As root, as in most containers, Chromium starts only without its sandbox.
				'--no-sandbox',
				'--disable-gpu',
				'--disable-quic',
				'--no-first-run',
				// Nothing but the pages under test is asked of any network.
				'--disable-background-networking',
				'--disable-component-update',
				'--disable-sync',
				// The heart-rate strap is one that Chromium emulates.
				'--enable-features=WebBluetooth'
			]
		}
	},
	webServer: {
		command: 'node .setup/serve.mjs',
		cwd: '..',
		url: `${address}/`,
		env: {
			...unset,
			PORT: port,
			DATA_FOLDER: dataFolder,
			BREATHMARK_KEY: randomBytes(32).toString('base64')
		},
		gracefulShutdown: { signal: 'SIGTERM', timeout: 5000 },
		stdout: 'pipe',
		stderr: 'pipe'
	}
});

function freePort(): Promise<number> {
	return new Promise((resolve, reject) => {
		const server = createServer();
		server.on('error', reject);
		server.listen(0, '127.0.0.1', () => {
			const address = server.address();
			server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
		});
	});
}
