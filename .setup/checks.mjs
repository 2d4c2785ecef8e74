// `npm test`: everything that has to hold, one step after the other. A step that fails does not
// keep the later ones from running, and the last line is the sum of all.
import { writeBuild } from './build.mjs';
import { bringChromium } from './chromium.mjs';
import { fromPlaywright, fromVitest, programOutcome, testOutcome } from './outcomes.mjs';
import { Refused, runProgram, seconds } from './processes.mjs';

/** West and east of Greenwich as far as people live: a date that slips by a zone slips in one. */
const timeZones = ['America/Los_Angeles', 'Pacific/Kiritimati'];

const modules = {
	eslint: 'node_modules/eslint/bin/eslint.js',
	kit: 'node_modules/@sveltejs/kit/svelte-kit.js',
	playwright: 'node_modules/@playwright/test/cli.js',
	prettier: 'node_modules/prettier/bin/prettier.cjs',
	svelteCheck: 'node_modules/svelte-check/bin/svelte-check',
	typescript: 'node_modules/typescript/bin/tsc',
	vitest: 'node_modules/vitest/vitest.mjs'
};

/**
 * @typedef {import('./toolchain.mjs').Toolchain} Toolchain
 * @typedef {import('./outcomes.mjs').Outcome} Outcome
 *
 * @typedef {object} Step
 * @property {string} name what `--only` names
 * @property {string} [of] tells steps of one name apart
 * @property {boolean} [tests] whether arguments that are left over go to it
 * @property {(tools: Toolchain, rest: string[]) => Promise<Outcome>} run
 *
 * @typedef {Outcome & {title: string, took: string}} Done
 */

/**
 * In the order in which they run.
 * @type {Step[]}
 */
const steps = [
	{ name: 'format', run: program(modules.prettier, '--check', '--log-level=warn', '.') },
	{ name: 'lint', run: program(modules.eslint, '--max-warnings=0', '.') },
	{ name: 'types', of: 'app and tests', run: program(modules.svelteCheck, '--fail-on-warnings') },
	{ name: 'types', of: 'runner', run: program(modules.typescript, '-p', '.setup/tsconfig.json') },
	{
		name: 'types',
		of: 'service worker',
		run: program(modules.typescript, '-p', '.setup/tsconfig.service-worker.json')
	},
	...timeZones.map((zone) => ({ name: 'unit', of: zone, tests: true, run: vitest('unit', zone) })),
	{ name: 'server', tests: true, run: vitest('server') },
	{ name: 'build', run: (tools) => writeBuild(tools).then(() => programOutcome(true)) },
	{ name: 'journeys', tests: true, run: journeys }
];

/**
 * @param {import('./toolchain.mjs').Toolchain} tools
 * @param {string[]} args `--only name,name`, then what goes on to the one kind of tests named
 * @returns {Promise<number>} an exit code
 */
export async function runChecks(tools, args) {
	const { chosen, rest } = chooseSteps(args);
	await runProgram(tools.node, [modules.kit, 'sync'], tools);
	/** @type {Done[]} */
	const done = [];
	for (const { name, of, tests, run } of chosen) {
		const title = of ? `${name}: ${of}` : name;
		console.log(`\n• ${title}`);
		const startedAt = Date.now();
		const outcome = await run(tools, tests ? rest : []).catch(showFailure);
		done.push({ title, took: seconds(Date.now() - startedAt), ...outcome });
	}
	console.log(['', ...done.map(summary), closingLine(done)].join('\n'));
	return done.some(({ failed }) => failed > 0) ? 1 : 0;
}

/**
 * @param {string[]} args
 * @returns the steps named, in their own order, and the arguments that go on to the tests
 */
export function chooseSteps(args) {
	if (args.length === 0) return { chosen: steps, rest: [] };
	const [flag, list = '', ...rest] = args;
	const names = [...new Set(steps.map(({ name }) => name))];
	const wanted = list.split(',');
	if (flag !== '--only' || !wanted.every((name) => names.includes(name))) {
		throw new Refused(`Say which: --only ${names.join(',')} (or some of these).`);
	}
	const chosen = steps.filter(({ name }) => wanted.includes(name));
	const kinds = new Set(chosen.filter(({ tests }) => tests).map(({ name }) => name));
	if (rest.length > 0 && kinds.size !== 1) {
		throw new Refused('More arguments go to one kind of tests: --only unit, server or journeys.');
	}
	return { chosen, rest };
}

/**
 * The line that a machine reads: alone, and last.
 * @param {Pick<Outcome, 'passed' | 'failed'>[]} outcomes
 */
export function closingLine(outcomes) {
	const passed = outcomes.reduce((sum, outcome) => sum + outcome.passed, 0);
	const failed = outcomes.reduce((sum, outcome) => sum + outcome.failed, 0);
	return `${passed} passed, ${failed} failed`;
}

/** @param {Done} step */
function summary({ title, took, passed, failed, skipped, again }) {
	const counts = [
		`${passed} passed`,
		failed && `${failed} FAILED`,
		skipped && `${skipped} skipped`,
		again && `${again} of them at the second try`
	];
	return `${title.padEnd(28)}${took.padStart(9)}   ${counts.filter(Boolean).join(', ')}`;
}

/** @param {unknown} error */
function showFailure(error) {
	console.error(error instanceof Refused ? error.message : error);
	return programOutcome(false);
}

/**
 * @param {string} script
 * @param {...string} args
 * @returns {Step['run']}
 */
function program(script, ...args) {
	return async (tools) =>
		programOutcome((await runProgram(tools.node, [script, ...args], tools)) === 0);
}

/**
 * @param {string} project
 * @param {string} [zone]
 * @returns {Step['run']}
 */
function vitest(project, zone) {
	const report = `reports/${project}${zone ? `-${zone.replace('/', '-')}` : ''}.json`;
	const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
	return (tools, rest) => {
		const args = [modules.vitest, 'run', '--project', project, ...reporters, ...rest];
		const env = zone ? { ...tools.env, TZ: zone } : tools.env;
		return testOutcome(report, fromVitest, () => runProgram(tools.node, args, { env }));
	};
}

/** @type {Step['run']} */
async function journeys(tools, rest) {
	// Where building fails there may still be an older build, which says nothing about today's sources.
	await writeBuild(tools);
	await bringChromium(tools);
	const args = [modules.playwright, 'test', '-c', 'tests/playwright.config.ts', ...rest];
	return testOutcome('reports/journeys.json', fromPlaywright, () =>
		runProgram(tools.node, args, tools)
	);
}
