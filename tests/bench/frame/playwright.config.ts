import { defineConfig } from '@playwright/test';
import journeys from '../../playwright.config.ts';

/** The same browser as that of the journeys, alone on the machine. */
export default defineConfig({
	...journeys,
	testDir: '.',
	outputDir: '../../../test-results',
	workers: 1,
	timeout: 180_000,
	reporter: [['line']]
});
