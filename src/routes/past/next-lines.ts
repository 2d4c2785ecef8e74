import type { LearnedCeiling } from '$lib/guidance/ceiling/learned-ceiling.ts';
import type { NextTime } from '$lib/guidance/next-time/next-time.ts';
import {
	kmPerHourFromMetresPerMinute,
	metresPerMinuteFromKmPerHour,
	metresPerMinuteFromMilesPerHour,
	milesPerHourFromMetresPerMinute,
	roundHalfUp,
	roundToStep
} from '$lib/physiology/units.ts';
import { decimal } from '$words/numbers.ts';
import { nextTimeWords as words, talkPulse } from '$words/next-time.ts';

type Unit = 'mph' | 'km/h';
type Gait = 'run' | 'walk';

/** Where running begins, and where walking ends, km/h. */
const SLOWEST_RUN = 5;
const FASTEST_WALK = 7;

/** A notch of a treadmill, up or down, km/h. */
function notched(speedKmh: number, unit: Unit, by: 1 | -1): number {
	if (unit === 'km/h') return roundToStep(speedKmh + by * 0.2, 0.1);
	const mph = milesPerHourFromMetresPerMinute(metresPerMinuteFromKmPerHour(speedKmh));
	const next = roundToStep(mph + by * 0.1, 0.1);
	return kmPerHourFromMetresPerMinute(metresPerMinuteFromMilesPerHour(next));
}

function speedText(speedKmh: number, unit: Unit): string {
	const mph = milesPerHourFromMetresPerMinute(metresPerMinuteFromKmPerHour(speedKmh));
	return `${decimal(unit === 'km/h' ? speedKmh : mph, 1)} ${unit}`;
}

interface Panel {
	readonly title: string;
	readonly lines: readonly string[];
}

/** What to do next time, in words. */
export const nextPanel = (next: NextTime, unit: Unit): Panel => ({
	title: words.title,
	lines: nextLines(next, unit)
});

/** A runner's own talking pulse, in words. */
export const ceilingPanel = (ceiling: LearnedCeiling): Panel => ({
	title: talkPulse.title,
	lines: ceilingLines(ceiling)
});

function nextLines(next: NextTime, unit: Unit): readonly string[] {
	const [one, other] = next.because;
	return [
		adviceLine(next, unit),
		words.because(words.factOf(one), words.factOf(other)),
		words.talkFirst
	];
}

function adviceLine({ advice, main, speedKmh, inAll }: NextTime, unit: Unit): string {
	const gait: Gait = main === 'steady-run' ? 'run' : 'walk';
	switch (advice) {
		case 'questions':
			return words.advice.questions;
		case 'walk-only':
			return words.advice.walkOnly;
		case 'ease-back':
			return easeBackLine(gait, speedKmh, unit);
		case 'longer-recovery':
			return words.advice.longerRecovery[gait];
		case 'next-step':
			return words.advice.nextStep[gait];
		case 'notch-up':
			return notchUpLine(gait, speedKmh, unit, inAll);
		case 'step-back':
			return words.advice.stepBack[gait];
		case 'same':
			return words.advice.same;
	}
}

function easeBackLine(gait: Gait, speedKmh: number | null, unit: Unit): string {
	const { easeBack } = words.advice;
	if (speedKmh === null) return easeBack[gait];
	const slower = notched(speedKmh, unit, -1);
	if (gait === 'run' && slower < SLOWEST_RUN) return easeBack.shorter;
	return easeBack.speed(speedText(slower, unit));
}

function notchUpLine(gait: Gait, speedKmh: number | null, unit: Unit, inAll: boolean): string {
	const { notchUp } = words.advice;
	const faster = speedKmh === null ? null : notched(speedKmh, unit, 1);
	if (gait === 'walk' && faster !== null && faster > FASTEST_WALK) return notchUp.incline;
	const where = notchUp[gait][inAll ? 'all' : 'last'];
	return faster === null ? where : `${where} ${notchUp.to(speedText(faster, unit))}`;
}

/** Rounded once, here, half up. */
function ceilingLines(ceiling: LearnedCeiling): readonly string[] {
	switch (ceiling.kind) {
		case 'too-few':
			return [talkPulse.tooFew(ceiling.answers, ceiling.needed), talkPulse.howToAnswer];
		case 'above-band':
			return [talkPulse.aboveBand(ceiling.answers), talkPulse.noTarget];
		case 'learned': {
			const { bpm, lowBpm, highBpm, answers, heard, stayUnderBpm } = ceiling;
			const whole = (pulse: number) => roundHalfUp(pulse, 0);
			return [
				talkPulse.learned(whole(bpm), whole(lowBpm), whole(highBpm)),
				stayUnderBpm === null ? null : talkPulse.stayUnder(whole(stayUnderBpm)),
				talkPulse.heard[heard],
				`${talkPulse.from(answers)} ${talkPulse.noTarget} ${talkPulse.notTested}`
			].filter((line) => line !== null);
		}
	}
}
