import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { chooseSteps, closingLine } from '../../../.setup/checks.mjs';
import { fromPlaywright, fromVitest, testOutcome } from '../../../.setup/outcomes.mjs';

const namesOf = (args: string[]) => chooseSteps(args).chosen.map(({ name }) => name);

test('without arguments everything runs, the cheapest first and the journeys last', () => {
	const names = namesOf([]);
	expect(names[0]).toBe('format');
	expect(names.at(-1)).toBe('journeys');
	expect(names.filter((name) => name === 'unit')).toHaveLength(2);
});

test('steps that are named run in their own order, and arguments go on to their tests', () => {
	expect(namesOf(['--only', 'types,lint'])).toEqual(['lint', 'types', 'types', 'types']);
	expect(chooseSteps(['--only', 'unit', 'tests/unit/outing']).rest).toEqual(['tests/unit/outing']);
});

test.each([
	[['tests/unit']],
	[['--only']],
	[['--only', 'everything']],
	[['--only', 'lint', 'src']],
	[['--only', 'unit,server', 'src']]
])('%j is refused', (args) => {
	expect(() => chooseSteps(args)).toThrow(/--only/);
});

test('the closing line adds up what passed and what failed', () => {
	expect(closingLine([])).toBe('0 passed, 0 failed');
	expect(
		closingLine([
			{ passed: 3, failed: 0 },
			{ passed: 4, failed: 2 }
		])
	).toBe('7 passed, 2 failed');
});

const folder = mkdtempSync(join(tmpdir(), 'breathmark-reports-'));
afterAll(() => rmSync(folder, { recursive: true }));

function vitestRun(counts: [passed: number, failed: number, pending: number] | null, code: number) {
	const path = join(folder, 'report.json');
	return testOutcome(path, fromVitest, () => {
		if (counts) {
			const [numPassedTests, numFailedTests, numPendingTests] = counts;
			const report = { numPassedTests, numFailedTests, numPendingTests, numTodoTests: 0 };
			writeFileSync(path, JSON.stringify(report));
		}
		return Promise.resolve(code);
	});
}

test('tests are counted as their runner counted them', async () => {
	expect(await vitestRun([5, 0, 1], 0)).toEqual({ passed: 5, failed: 0, skipped: 1 });
	expect(await vitestRun([5, 2, 0], 1)).toEqual({ passed: 5, failed: 2, skipped: 0 });
	const stats = { expected: 4, unexpected: 1, flaky: 1, skipped: 2 };
	expect(fromPlaywright({ stats })).toEqual({ passed: 5, failed: 1, skipped: 2, again: 1 });
});

test('a runner that fails without a failing test, finds none or never reports has failed', async () => {
	expect(await vitestRun([5, 0, 0], 1)).toMatchObject({ passed: 5, failed: 1 });
	expect(await vitestRun([0, 0, 0], 0)).toMatchObject({ passed: 0, failed: 1 });
	expect(await vitestRun(null, 0)).toMatchObject({ passed: 0, failed: 1 });
});
