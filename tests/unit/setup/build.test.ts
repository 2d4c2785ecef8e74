import { mkdirSync, mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { fingerprintOf } from '../../../.setup/build.mjs';

let folder = '';
beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), 'breathmark-sources-'));
	mkdirSync(join(folder, 'in'));
	writeFileSync(join(folder, 'in/a'), 'one');
	writeFileSync(join(folder, 'b'), 'two');
});
afterEach(() => rmSync(folder, { recursive: true }));

const now = () => fingerprintOf([folder, join(folder, 'missing')]);

test('the same contents have the same fingerprint, whatever their dates', () => {
	const before = now();
	utimesSync(join(folder, 'in/a'), 0, 0);
	expect(now()).toBe(before);
});

test.each([
	['a changed file', () => writeFileSync(join(folder, 'in/a'), 'ONE')],
	['a new file', () => writeFileSync(join(folder, 'in/c'), '')],
	['a file that is gone', () => rmSync(join(folder, 'b'))],
	['a renamed file', () => renameSync(join(folder, 'b'), join(folder, 'c'))]
])('%s changes the fingerprint', (_, change) => {
	const before = now();
	change();
	expect(now()).not.toBe(before);
});
