import type { RequestEvent } from '@sveltejs/kit';
import { compareDates, localDate } from '$lib/screening/calendar.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { LocalDate } from '$lib/screening/types.ts';
import { whoMayAdvise } from '$lib/screening/who-may-advise.ts';
import * as advice from '$lib/server/advice.ts';
import * as adviceConfirmations from '$lib/server/advice-confirmations.ts';

export interface Covered {
	readonly id: string;
	/** Coaches who confirmed the advice of an exercise professional; null where it was no such advice. */
	readonly confirmedBy:
		| readonly {
				readonly coachName: string;
				readonly qualification: string | null;
				readonly on: LocalDate;
		  }[]
		| null;
}

/**
 * Reasons that advice covers. Where an exercise professional gave it, as for age, it says which coach
 * confirmed it and with what qualification, or with none.
 */
export async function coveredBy(
	{ locals: { house, runner } }: Pick<RequestEvent, 'locals'>,
	ids: readonly string[],
	timeZone: string
): Promise<Covered[]> {
	if (runner === null || !ids.some(isAge)) return ids.map((id) => ({ id, confirmedBy: null }));
	const { database, vault } = house;
	const held = await advice.list(database, vault, runner.runnerId);
	const confirmed = await adviceConfirmations.ofRunner(database, runner.runnerId);
	return ids.map((id) => {
		const newest = held
			.filter(({ covers }) => covers.includes(id))
			.sort((one, other) => compareDates(other.givenOn, one.givenOn))[0];
		if (newest?.role !== 'exercise-professional') return { id, confirmedBy: null };
		const words = confirmed.filter(({ adviceId }) => adviceId === newest.id);
		return {
			id,
			confirmedBy: words.map(({ coachName, qualification, confirmedAt }) => ({
				coachName,
				qualification,
				on: localDate(confirmedAt, timeZone)
			}))
		};
	});
}

const isAge = (id: string) =>
	currentRuleset.rules.some(
		(rule) =>
			rule.id === id &&
			rule.does === 'outcome' &&
			whoMayAdvise[rule.kind].includes('exercise-professional')
	);
