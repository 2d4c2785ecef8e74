import { guide, type Guidance } from '../guidance/guide.ts';
import type { RunnerProfile } from '../guidance/profile.ts';
import { emptyProfile } from '../guidance/profile.ts';
import type { Access } from '../screening/access.ts';
import { daysBetween } from '../screening/calendar.ts';
import type { LocalDate } from '../screening/types.ts';
import type { Signed } from './auth.ts';
import { gate } from './gate.ts';
import type { House } from './open-house.ts';
import * as profiles from './profiles.ts';
import * as walks from './walks.ts';

/** What a runner may see of their own bands now. Closed guidance holds no number. */
export async function of(
	house: House,
	runner: Signed | null,
	now: number,
	/** The runner's own date. */
	today: LocalDate
): Promise<{ readonly access: Access; readonly guidance: Guidance }> {
	const access = await gate(house, runner, now);
	if (!access.allowed || runner === null) {
		return { access, guidance: guide(access, emptyProfile, []) };
	}
	const kept = await profiles.load(house.database, house.vault, runner.runnerId);
	const walked = await walks.list(house.database, runner.runnerId);
	const daysSince = walked.map((on) => daysBetween(on, today)).filter((days) => days >= 0);
	return { access, guidance: guide(access, profileFor(kept), daysSince) };
}

function profileFor(kept: profiles.Profile): RunnerProfile {
	return {
		mornings: kept.mornings.map(({ bpm }) => bpm),
		supervisedMaximumBpm: kept.supervisedMaximumBpm,
		supervisedCapacity: kept.supervisedCapacity
	};
}
