import * as contacts from '../contacts.ts';
import { noonOf, type DemoPart } from './parts.ts';
import { addDays } from '../../calendar/local-date.ts';

/** Ofcom keeps 01632 960000 to 960999 free for film and stage, so nobody is ever called (M). */
const numberOf = (i: number) => `+44163296000${i + 1}`;

/** Whom to call for some of them. */
export const emergencyContacts: DemoPart = async ({ database, vault, words, runners, today }) => {
	for (const [i, { of, name, relation }] of words.contacts.entries()) {
		const runner = runners.get(of);
		if (runner === undefined) continue;
		const contact = { name, phone: numberOf(i), relation };
		await contacts.keep(database, vault, runner.runnerId, contact, noonOf(addDays(today, -27)));
	}
};
