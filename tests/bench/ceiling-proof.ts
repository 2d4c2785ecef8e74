import { talkCeiling } from '../../src/lib/guidance/ceiling/talk-ceiling.ts';
import { prove } from '../unit/guidance/ceiling/invented-runners.ts';

/*
 * Whether the talk ceiling is learned rightly, on two thousand invented runners that are drawn from
 * what the model takes for granted: twelve talk answers each over six outings. It proves the sums, not
 * people. Takes some minutes: `npm run bench -- proof`.
 */

const RUNNERS = 2000;

const ways = [
	{ name: 'all on one day', daysApart: 0, mustHold: [0.77, 0.83] },
	{ name: 'four days apart, with fading', daysApart: 4, mustHold: [0.77, 1] },
	{ name: 'the truth 10 bpm higher', daysApart: 4, offBpm: 10, mustHold: [0.72, 1] },
	{ name: 'the truth 10 bpm lower', daysApart: 4, offBpm: -10, mustHold: [0.72, 1] }
] as const;

export function proveCeiling(): void {
	const table = ways.map(({ name, mustHold: [low, high], ...way }) => {
		const { errorBpm, priorErrorBpm, held } = prove(talkCeiling, RUNNERS, way);
		const reached = errorBpm <= priorErrorBpm / 2 && held >= low && held <= high;
		if (!reached) process.exitCode = 1;
		return {
			runners: name,
			'error, bpm': errorBpm.toFixed(1),
			'at first, bpm': priorErrorBpm.toFixed(1),
			'80 % interval holds': held.toFixed(3),
			'must hold': `${low} to ${high}`,
			result: reached ? 'reached' : 'missed'
		};
	});
	console.table(table);
}
