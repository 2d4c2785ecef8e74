import { defineConfig } from '@playwright/test';
import { findChromium } from '../.setup/chromium.mjs';

// What a journey's own server must not take over from whoever runs the journeys. Every worker reads
// this file, and serves the built app for itself.
for (const name of ['ORIGIN', 'DATABASE_URL', 'HOST', 'PROTOCOL_HEADER', 'BODY_SIZE_LIMIT']) {
	delete process.env[name];
}

export default defineConfig({
	testDir: 'journeys',
	outputDir: '../test-results',
	fullyParallel: true,
	forbidOnly: process.env.CI !== undefined,
	workers: 2,
	// A slow machine may lose a race that no person runs. What passes at the second try is named at the
	// end and is to be mended; what guards the gate has one try.
	retries: 1,
	// A walk over every page of the desk takes a minute on a machine that is busy with another. What
	// hangs is told by the step that waits, not by the whole.
	timeout: 300_000,
	expect: { timeout: 15_000 },
	reporter: [['line'], ['json', { outputFile: '../reports/journeys.json' }]],
	use: {
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
	}
});
