import type { Settings } from '$lib/server/settings.ts';
import type { Units } from './speed-view.ts';

/** The runner's units; kilometres for whoever has not chosen. */
export function unitsOf({ units, paceUnits }: Settings): Units {
	return {
		speed: units === 'mph' ? 'mph' : 'km/h',
		pace: paceUnits === 'min/mile' ? 'min/mile' : 'min/km'
	};
}
