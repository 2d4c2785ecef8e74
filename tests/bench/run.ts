import { readdirSync } from 'node:fs';
import { Bench } from 'tinybench';
import type { BenchCase } from './bench-case.ts';

if (process.argv.includes('proof')) {
	const { proveCeiling } = await import('./ceiling-proof.ts');
	proveCeiling();
	process.exit();
}

/** Times every case of the files called *.bench.ts here, prints a table, and fails if one is slow. */
const files = readdirSync(import.meta.dirname).filter((name) => name.endsWith('.bench.ts'));
const cases: BenchCase[] = [];
for (const file of files.sort()) {
	const suite = (await import(`./${file}`)) as { cases: readonly BenchCase[] };
	cases.push(...suite.cases);
}

async function medianMicroseconds(work: () => unknown): Promise<number> {
	const bench = new Bench({ time: 300, warmupTime: 100 });
	bench.add('work', () => {
		// The result is kept until the next round, so that the work cannot be left out. A promise is
		// waited for.
		kept = work();
		return kept;
	});
	const [task] = await bench.run();
	if (task?.result.state !== 'completed') throw new Error('a piece of work did not complete');
	return task.result.latency.p50 * 1000;
}

let kept: unknown;
const rows: Record<string, string>[] = [];
for (const { name, work, reference, mustReachMicroseconds } of cases) {
	const [taken, plain] = [await medianMicroseconds(work), await medianMicroseconds(reference.work)];
	const reached = taken <= mustReachMicroseconds;
	if (!reached) process.exitCode = 1;
	rows.push({
		work: name,
		'median, us': taken.toFixed(1),
		'must reach, us': String(mustReachMicroseconds),
		reference: reference.name,
		'reference, us': plain.toFixed(1),
		times: (taken / plain).toFixed(1),
		result: reached ? 'reached' : 'missed'
	});
}
console.table(rows);
if (kept === undefined) throw new Error('nothing was measured');
