import { expect, test } from 'vitest';
import { browserOf } from '../../src/routes/coach/account/browser-of.ts';

// What browsers call themselves, from memory.

test.each([
	[
		'Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/141.0.0.0 Safari/537.36 Edg/141.0.0.0',
		'Edge',
		'Windows'
	],
	[
		'Mozilla/5.0 (iPhone; CPU iPhone OS 18_1 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/18.1 Mobile/15E148 Safari/604.1',
		'Safari',
		'iPhone'
	],
	[
		'Mozilla/5.0 (Linux; Android 15) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/141.0.0.0 Mobile Safari/537.36',
		'Chrome',
		'Android'
	],
	[
		'Mozilla/5.0 (Macintosh; Intel Mac OS X 10.15; rv:143.0) Gecko/20100101 Firefox/143.0',
		'Firefox',
		'macOS'
	],
	['curl/8.9', null, null],
	['', null, null]
])('%s', (agent, browser, system) => {
	expect(browserOf(agent)).toEqual({ browser, system });
});
