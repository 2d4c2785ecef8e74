import { addDays } from '../../calendar/local-date.ts';
import * as advice from '../advice.ts';
import * as adviceConfirmations from '../advice-confirmations.ts';
import { noonOf, type DemoPart } from './parts.ts';
import { demoRunners } from './people.ts';

/** The reason that whoever is over 45 and new to hard exercise has; all that is covered here. */
const COVERED = ['R-AGE-45'];

/** What doctors said, written down by the runner and confirmed by the coach the day after. */
export const adviceOfDoctors: DemoPart = async (group) => {
	const { database, vault, coach, groupId, today } = group;
	for (const [id, { runnerId, memberId }] of group.runners) {
		const given = demoRunners[id].advice;
		if (given === null) continue;
		const givenOn = addDays(today, -given.daysAgo);
		const said = { givenOn, role: given.role, scope: 'walkrun', limitBpm: null } as const;
		const words = { ...said, covers: COVERED };
		const kept = await advice.record(database, vault, runnerId, words, noonOf(givenOn));
		const at = noonOf(addDays(givenOn, 1));
		await adviceConfirmations.confirm(database, coach, groupId, memberId, kept.id, at);
	}
};
