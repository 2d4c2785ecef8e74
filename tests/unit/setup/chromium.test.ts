import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findChromium } from '../../../.setup/chromium.mjs';

let folder = '';
beforeAll(() => {
	folder = mkdtempSync(join(tmpdir(), 'breathmark-browsers-'));
	for (const [place, mode] of [
		['without', null],
		['not-to-run', 0o644],
		['to-run', 0o755]
	] as const) {
		mkdirSync(join(folder, place));
		if (mode === null) continue;
		writeFileSync(join(folder, place, 'chromium'), '');
		chmodSync(join(folder, place, 'chromium'), mode);
	}
});
afterAll(() => rmSync(folder, { recursive: true }));

const path = (...places: string[]) =>
	places.map((place) => place && join(folder, place)).join(delimiter);

test.skipIf(process.platform === 'darwin')('where the path names no browser there is none', () => {
	expect(findChromium({})).toBeUndefined();
	expect(findChromium({ PATH: path('without', '') })).toBeUndefined();
	expect(findChromium({ PATH: path('not-to-run') })).toBeUndefined();
});

test('the first that can be run is taken', () => {
	const found = findChromium({ PATH: path('without', '', 'not-to-run', 'to-run') });
	expect(found).toBe(join(folder, 'to-run/chromium'));
});

test('a browser that is named is the one', () => {
	expect(findChromium({ CHROMIUM: '/opt/mine', PATH: path('to-run') })).toBe('/opt/mine');
});
