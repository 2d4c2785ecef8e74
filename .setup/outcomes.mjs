// What a step came to, read from the reports that the test runners write.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';

/** @typedef {{passed: number, failed: number, skipped: number, again?: number}} Outcome */

/**
 * A program counts as one check.
 * @param {boolean} ended well
 * @returns {Outcome}
 */
export const programOutcome = (ended) => ({
	passed: ended ? 1 : 0,
	failed: ended ? 0 : 1,
	skipped: 0
});

/** @param {any} report as vitest's json reporter writes it */
export const fromVitest = (report) => ({
	passed: report.numPassedTests,
	failed: report.numFailedTests,
	skipped: report.numPendingTests + report.numTodoTests
});

/** @param {any} report as Playwright's json reporter writes it */
export const fromPlaywright = ({ stats }) => ({
	passed: stats.expected + stats.flaky,
	failed: stats.unexpected,
	skipped: stats.skipped,
	/** Passed at the second try only: counted, and named by the reporter, so that it is mended. */
	again: stats.flaky
});

/**
 * @param {string} path where the runner writes its report; an older one is removed first
 * @param {(report: any) => Outcome} read
 * @param {() => Promise<number>} run answers with an exit code
 * @returns {Promise<Outcome>}
 */
export async function testOutcome(path, read, run) {
	mkdirSync(dirname(path), { recursive: true });
	rmSync(path, { force: true });
	const code = await run();
	const counted = existsSync(path)
		? read(JSON.parse(readFileSync(path, 'utf8')))
		: { passed: 0, failed: 0, skipped: 0 };
	// A file that cannot be loaded has no tests to fail, and a suite without tests checks nothing.
	const silent = counted.failed === 0 && (code !== 0 || counted.passed === 0);
	return silent ? { ...counted, failed: 1 } : counted;
}
