import { bands } from '$words/bands.ts';
import type { SpeedView } from './speed-view.ts';

/** A speed in one line, for a table or a card. */
export function speedText(speed: SpeedView): string {
	switch (speed.kind) {
		case 'natural':
			return speed.high === null
				? bands.speed.from(speed.low, speed.unit)
				: bands.speed.range(speed.low, speed.high, speed.unit);
		case 'range':
			return bands.speed.range(speed.low, speed.high, speed.unit);
		case 'incline':
			return bands.speed.withIncline(speed.speed, speed.unit, speed.percent);
		case 'no-run-this-gentle':
			return speed.longest === null
				? bands.speed.shortRunsOnly
				: bands.speed.upTo(speed.at, speed.unit, speed.longest);
		case 'too-fast-to-walk':
		case 'no-walk-this-gentle':
			return bands.speed.byTheLine;
	}
}
