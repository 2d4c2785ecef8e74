import { targetAtFraction } from '../physiology/reserve.ts';
import { roundHalfUp } from '../physiology/units.ts';
import { LOWEST_FRACTION } from './band-setting.ts';
import type { PulseBasis } from './pulse-basis.ts';

/** About how many beats a minute one share of the reserve is. */
export interface RoughBeats {
	/** Whole per cent of the reserve. */
	readonly percent: number;
	/** A multiple of five. */
	readonly bpm: number;
}

/** Our own choice, no source: well inside what a band is unsure by. */
const STEP_BPM = 5;
const STEP_PERCENT = 10;

/**
 * For a coach who is about to move a band: rough beats at every tenth of the reserve that may be set,
 * and where it ends. An exact line over the whole reserve would tell the resting pulse and the
 * maximum, and so the age; this tells no more than the bands themselves do. A limit of the care team
 * holds here too.
 *
 * @param highestFraction how far the band may be raised
 */
export function roughBeats(
	{ resting, maximum, careTeamLimitBpm }: Extract<PulseBasis, { kind: 'on' }>,
	highestFraction: number
): readonly RoughBeats[] {
	const limit = Math.floor((careTeamLimitBpm ?? Infinity) / STEP_BPM) * STEP_BPM;
	return percentsTo(Math.round(highestFraction * 100)).map((percent) => {
		const { bpm } = targetAtFraction(percent / 100, resting, maximum);
		return { percent, bpm: Math.min(inSteps(bpm), limit) };
	});
}

/** Between two points it is reckoned along a straight line; null outside of them. */
export function roughBeatsAt(points: readonly RoughBeats[], percent: number): number | null {
	const above = points.find((point) => point.percent >= percent);
	const below = points.findLast((point) => point.percent <= percent);
	if (above === undefined || below === undefined) return null;
	if (above.percent === below.percent) return above.bpm;
	const share = (percent - below.percent) / (above.percent - below.percent);
	return inSteps(below.bpm + share * (above.bpm - below.bpm));
}

function percentsTo(highest: number): readonly number[] {
	const lowest = Math.round(LOWEST_FRACTION * 100);
	const count = Math.ceil((highest - lowest) / STEP_PERCENT);
	const tenths = Array.from({ length: Math.max(0, count) }, (_, i) => lowest + i * STEP_PERCENT);
	return [...tenths, highest];
}

const inSteps = (bpm: number) => roundHalfUp(bpm / STEP_BPM, 0) * STEP_BPM;
