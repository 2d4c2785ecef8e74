import { randomBytes } from 'node:crypto';
import { todayIn } from './days.ts';
import type { House } from './house.ts';
import type { Phone } from './phone.ts';
import { leadsTo } from './walk.ts';

interface Company {
	readonly phone: Phone;
	readonly house: House;
}

/** How somebody comes to be refused, from an account that had bands with a pulse. */
export const closings: Readonly<Record<string, (company: Company) => Promise<unknown>>> = {
	'nobody, after everything was deleted': ({ phone }) =>
		phone.lead('/account?/delete', { sure: 'yes' }),
	'nobody, after leaving this phone': ({ phone }) => phone.lead('/account?/signOut'),
	'no result, but open answers': async ({ phone }) => {
		await phone.lead('/account?/delete', { sure: 'yes' });
		await phone.answerAll();
	},
	'not today': ({ phone }) => phone.screen(leadsTo.notToday),
	'ask first': ({ phone }) => phone.screen(leadsTo.askFirst),
	'an urgent sign': ({ phone }) => phone.lead('/screening?/answer', { urgent: 'chest' }),
	'an ended result': ({ house }) => house.reopen({ daysAhead: 366 }),
	'a health change': ({ phone }) => phone.lead('/screening/change'),
	'a change of health, answered up to the check page': async ({ phone }) => {
		await phone.lead('/screening/change');
		await phone.answerAll();
	},
	'consent taken back': ({ phone }) => phone.lead('/account?/withdraw'),
	'an age under 18': async ({ phone }) => {
		const next = await phone.begin();
		await phone.send(next, { question: 'age.years', answer: 17 });
	},
	'"nothing yet" from a nurse': async ({ phone }) => {
		await phone.screen(leadsTo.mayWalk);
		const said = { role: 'nurse', scope: 'none', covers: 'R-AGE-45', limitBpm: '' };
		await phone.lead('/screening/advice?/record', { ...said, givenOn: todayIn('UTC') });
	},
	'another key': ({ house }) => house.reopen({ key: randomBytes(32).toString('hex') })
};
