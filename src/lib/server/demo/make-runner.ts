import { addDays, addMonths, type LocalDate } from '../../calendar/local-date.ts';
import { currentRuleset } from '../../screening/rulesets/index.ts';
import * as consents from '../consents.ts';
import * as joining from '../joining.ts';
import * as settings from '../settings.ts';
import * as users from '../users.ts';
import { emailOf, mark } from './found.ts';
import { DEMO_EMERGENCY, DEMO_ZONE } from './make-group.ts';
import { noonOf, type DemoStores } from './parts.ts';
import { demoRunners, type DemoRunner, type DemoRunnerId } from './people.ts';
import { answerQuestions } from './answer-questions.ts';

/**
 * Somebody who agrees to the questions, answers them, and joins by the group's link under their
 * name: in the same order as a real runner, by the same modules.
 */
export async function makeRunner(
	stores: DemoStores,
	id: DemoRunnerId,
	name: string,
	token: string,
	today: LocalDate
): Promise<{ readonly runnerId: string; readonly memberId: string }> {
	const { database } = stores;
	const { answers, joinedDaysAgo, screened } = demoRunners[id];
	const screenedAt = noonOf(screenedOn(screened, today));
	const runnerId = await account(stores, id, screenedAt);
	await consents.give(database, runnerId, screenedAt);
	const own = { name, timeZone: DEMO_ZONE, emergencyNumber: DEMO_EMERGENCY, units: 'km/h' };
	await settings.save(database, runnerId, own);
	await answerQuestions(stores, runnerId, answers, DEMO_ZONE, screenedAt);
	const joinedAt = noonOf(addDays(today, -joinedDaysAgo));
	const joined = await joining.join(database, token, runnerId, name, joinedAt);
	if (!('memberId' in joined)) throw new Error(`${id} could not join: ${joined.kind}`);
	return { runnerId, memberId: joined.memberId };
}

async function account({ database }: DemoStores, id: DemoRunnerId, madeAt: number) {
	return database.transaction().execute(async (step) => {
		const user = { email: emailOf(id), name: 'Runner', isAnonymous: true } as const;
		const runnerId = await users.insert(step, user, madeAt);
		if (runnerId === null) throw new Error(`${id} is here already`);
		await mark(step, runnerId, id);
		return runnerId;
	});
}

/** The day on which a result begins, so that its last day is where it is wanted. */
function screenedOn(screened: DemoRunner['screened'], today: LocalDate): LocalDate {
	if ('daysAgo' in screened) return addDays(today, -screened.daysAgo);
	return addMonths(addDays(today, screened.endsInDays + 1), -currentRuleset.validMonths);
}
