import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { ownScript } from './.setup/own-script.js';
import { pseudoWords } from './tests/pseudo/pseudo-words.js';

export default defineConfig({
	plugins: [ownScript([pseudoWords()]), sveltekit(), pseudoWords()],
	build: { target: 'es2022' },
	test: {
		projects: [
			{
				extends: true,
				test: {
					name: 'unit',
					// Laws over thousands of answer sets take their time where a machine is busy.
					testTimeout: 120_000,
					include: [
						'tests/unit/**/*.test.ts',
						'tests/published/**/*.test.ts',
						'tests/*.test.ts',
						'tests/architecture/**/*.test.ts'
					]
				}
			},
			{
				extends: true,
				test: {
					name: 'server',
					include: ['tests/server/**/*.test.ts'],
					globalSetup: ['tests/server/postgres.ts'],
					testTimeout: 60_000
				}
			}
		]
	}
});
