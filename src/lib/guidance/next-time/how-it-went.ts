import { phasesOf } from '../../outing/outing.ts';
import { factsOf, hurt, type Asked, type DatedOuting } from './asked.ts';
import type { Fact } from './fact.ts';
import type { OutingFacts } from './outing-facts.ts';

const OVER_SHARE = 1 / 3;
const EASE_OFF = 7;

export const talkFact = ({ talk, answered, mainPhases }: OutingFacts): Fact =>
	talk === null ? { kind: 'answered', answered, of: mainPhases } : { kind: 'talk', talk };

export const effortFact = ({ highestEffort }: OutingFacts): Fact => ({
	kind: 'effort',
	effort: highestEffort
});

/** Why it was too much; empty where it was not. */
export function tooMuch(seen: OutingFacts): readonly Fact[] {
	const { unfinished, mainPhases, brokeOff, highestEffort } = seen;
	const facts: Fact[] = [];
	if (unfinished > 0) facts.push({ kind: 'unfinished', count: unfinished, of: mainPhases });
	if (brokeOff >= 2) facts.push({ kind: 'broke-off', phases: brokeOff });
	if ((highestEffort ?? 0) > EASE_OFF) facts.push(effortFact(seen));
	return facts;
}

/** Why it was a bit much. */
export function aBitMuch(seen: OutingFacts): readonly Fact[] {
	const { brokeOff, highestEffort, overBandShare } = seen;
	const facts: Fact[] = [];
	if (brokeOff === 1) facts.push({ kind: 'broke-off', phases: brokeOff });
	if (highestEffort === EASE_OFF) facts.push(effortFact(seen));
	if (overBandShare !== null && overBandShare > OVER_SHARE) {
		facts.push({ kind: 'over-band', share: overBandShare });
	}
	return facts;
}

/** Comfortable throughout, asked in most of the phases that count, and the pulse not over its band. */
export const isEasy = (seen: OutingFacts): boolean =>
	seen.talk === 'comfortable' &&
	seen.highestEffort !== null &&
	seen.highestEffort < EASE_OFF &&
	(seen.overBandShare ?? 0) === 0 &&
	seen.answered * 2 > seen.mainPhases;

/** How many times this very outing went well, up to and with the newest. Hot ones do not count. */
export function timesItWentWell({ outings, rules }: Pick<Asked, 'outings' | 'rules'>): number {
	const shape = shapeOf(outings[0]);
	let times = 0;
	for (const outing of outings) {
		if (shape === null || shapeOf(outing) !== shape) break;
		if (outing.started?.hot) continue;
		const { talk, answered, unfinished, highestEffort } = factsOf(outing, rules);
		const wentWell = talk === 'comfortable' || talk === 'late-breaths';
		const isWhole = outing.ended?.how === 'finished' && unfinished === 0 && answered > 0;
		if (!wentWell || !isWhole || (highestEffort ?? 0) >= EASE_OFF || hurt(outing)) break;
		times += 1;
	}
	return times;
}

function shapeOf(outing: DatedOuting | undefined): string | null {
	if (!outing?.started) return null;
	const phases = phasesOf(outing.started.outing);
	return phases.map(({ kind, seconds }) => `${kind} ${seconds}`).join();
}

/** Why nothing is raised, where nothing was too much either. Two at least. */
export function shortfalls({ seen, newest, rules }: Asked): readonly Fact[] {
	const facts: Fact[] = [];
	const why = rules.held[seen.main];
	if (why !== null) facts.push({ kind: 'held', why });
	if (newest.started?.hot) facts.push({ kind: 'hot' });
	if (hurt(newest)) facts.push({ kind: 'pain' });
	if (newest.ended === null) facts.push({ kind: 'no-end' });
	if (newest.ended?.how === 'early') facts.push({ kind: 'ended-early' });
	const asked: Fact = { kind: 'answered', answered: seen.answered, of: seen.mainPhases };
	if (seen.answered * 2 <= seen.mainPhases) facts.push(asked);
	if (seen.talk !== null) facts.push(talkFact(seen));
	return [...facts, effortFact(seen), asked];
}
