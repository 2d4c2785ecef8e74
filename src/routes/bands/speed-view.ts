import type { SpeedAdvice } from '$lib/guidance/speed-advice.ts';
import {
	kmPerHourFromMetresPerMinute,
	milesPerHourFromMetresPerMinute
} from '$lib/physiology/units.ts';
import { minutesAndSeconds } from '$words/dates.ts';
import { decimal } from '$words/numbers.ts';
import { paceOf, type PaceUnit } from './pace-of.ts';

export interface Units {
	readonly speed: 'km/h' | 'mph';
	readonly pace: PaceUnit;
}

interface Shown {
	readonly unit: string;
	readonly paceUnit: string;
	readonly low: string;
	readonly slowPace: string;
}

/** A speed as it is shown, in the runner's own units, rounded once. */
export type SpeedView =
	| ({
			readonly kind: 'natural';
			readonly high: string | null;
			readonly fastPace: string | null;
	  } & Shown)
	| ({
			readonly kind: 'range';
			readonly high: string;
			readonly fastPace: string;
			readonly spread: string;
	  } & Shown)
	| {
			readonly kind: 'incline';
			readonly percent: string;
			readonly speed: string;
			readonly unit: string;
	  }
	| { readonly kind: 'too-fast-to-walk' }
	| { readonly kind: 'no-walk-this-gentle' }
	| {
			readonly kind: 'no-run-this-gentle';
			readonly longest: string | null;
			readonly at: string;
			readonly unit: string;
	  };

export function speedView(speed: SpeedAdvice, units: Units): SpeedView {
	const show = (metresPerMinute: number) => decimal(inUnit(metresPerMinute, units), 1);
	const pace = (metresPerMinute: number) => paceOf(metresPerMinute, units.pace);
	const unit = units.speed;
	const paceUnit = units.pace;
	switch (speed.kind) {
		case 'natural': {
			const { lowMetresPerMinute: low, highMetresPerMinute: high } = speed;
			return {
				kind: 'natural',
				unit,
				paceUnit,
				low: show(low),
				slowPace: pace(low),
				high: high === null ? null : show(high),
				fastPace: high === null ? null : pace(high)
			};
		}
		case 'range':
			return {
				kind: 'range',
				unit,
				paceUnit,
				low: show(speed.lowMetresPerMinute),
				high: show(speed.highMetresPerMinute),
				slowPace: pace(speed.lowMetresPerMinute),
				fastPace: pace(speed.highMetresPerMinute),
				spread: show(speed.spreadMetresPerMinute)
			};
		case 'too-fast-to-walk': {
			if (speed.incline === null) return { kind: 'too-fast-to-walk' };
			const { lowGrade, speedMetresPerMinute } = speed.incline;
			return {
				kind: 'incline',
				percent: decimal(lowGrade * 100, 1),
				speed: show(speedMetresPerMinute),
				unit
			};
		}
		case 'no-walk-this-gentle':
			return { kind: 'no-walk-this-gentle' };
		case 'no-run-this-gentle': {
			const { slowest } = speed;
			if (slowest.kind === 'short-runs') return { kind: speed.kind, longest: null, at: '', unit };
			// Downwards to five seconds: a run is never promised longer than it was worked out.
			const seconds = Math.floor(slowest.seconds / 5) * 5;
			return {
				kind: speed.kind,
				longest: minutesAndSeconds(seconds),
				at: show(slowest.speedMetresPerMinute),
				unit
			};
		}
	}
}

const inUnit = (metresPerMinute: number, { speed }: Units) =>
	speed === 'km/h'
		? kmPerHourFromMetresPerMinute(metresPerMinute)
		: milesPerHourFromMetresPerMinute(metresPerMinute);
