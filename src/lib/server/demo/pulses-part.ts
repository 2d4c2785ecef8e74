import { addDays } from '../../calendar/local-date.ts';
import * as profiles from '../profiles.ts';
import { noonOf, type DemoPart } from './parts.ts';
import { demoRunners } from './people.ts';

/** Resting pulses counted for a minute, the newest yesterday, every second day before. */
export const restingPulses: DemoPart = async ({ database, vault, runners, today }) => {
	for (const [id, { runnerId }] of runners) {
		const oldestFirst = demoRunners[id].mornings
			.map((bpm, i) => ({ bpm, on: addDays(today, -1 - 2 * i), method: 60 as const }))
			.reverse();
		for (const morning of oldestFirst) {
			const withIt = (before: profiles.Profile) => profiles.withMorning(before, morning);
			await profiles.change(database, vault, runnerId, withIt, noonOf(morning.on));
		}
	}
};
