import { speedTexts } from '$words/band-numbers.ts';
import type { SpeedView } from '../bands/view.ts';

/**
 * The speed of a band in one line, as a pace where that is asked for. The rest of the advice was read
 * on the page of the bands; here is room for one look.
 */
export function howFast(speed: SpeedView, isPace: boolean): string {
	switch (speed.kind) {
		case 'natural':
		case 'range': {
			const { low, high, unit, slowPace, fastPace, paceUnit } = speed;
			if (isPace && fastPace === null) return speedTexts.paceBegin(slowPace, paceUnit);
			if (isPace && fastPace !== null) return speedTexts.range(slowPace, fastPace, paceUnit);
			return high === null ? speedTexts.from(low, unit) : speedTexts.range(low, high, unit);
		}
		case 'incline':
			return speedTexts.incline(speed.percent, speed.speed, speed.unit);
		case 'too-fast-to-walk':
			return speedTexts.tooFast;
		case 'no-walk-this-gentle':
			return speedTexts.noWalkThisGentle;
		case 'no-run-this-gentle':
			return speedTexts.noRunThisGentle;
	}
}
