import type { Page } from '@playwright/test';
import { plusDays, todayIn } from './days.ts';
import type { House } from './house.ts';
import { didAnOuting } from './past-outing.ts';
import type { Phone } from './phone.ts';
import { baseline, leadsTo, ready, type Answers } from './walk.ts';

/** What is looked at where a walk stops: the name of the page and its state, and the page itself. */
export type Look = (stop: string, page: Page) => Promise<void>;

interface Company {
	readonly page: Page;
	readonly phone: Phone;
	readonly house: House;
}

export interface Walk {
	readonly name: string;
	readonly go: (company: Company, look: Look) => Promise<void>;
}

const { 'heart.told': _asked, ...allButOne } = baseline;
const advice = { role: 'doctor', covers: 'R-SIGN-ANKLES', scope: 'walkrun', limitBpm: '' };

const today = () => todayIn('Etc/UTC');

/** Answers given one by one, to questions that are open. */
async function answer(phone: Phone, answers: Answers) {
	for (const [question, given] of Object.entries(answers)) {
		await phone.send('/screening/questions/2', { question, answer: given });
	}
}

const press = async (page: Page, name: string | RegExp) => {
	await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name }).click()]);
};

/** Every page and every state of it, each once. A new page is looked at when it is added here. */
export const walks: readonly Walk[] = [
	{
		name: 'before anything is stored',
		async go({ page }, look) {
			const read = ['/', '/privacy', '/safety', '/methods', '/methods/formulas', '/methods/checks'];
			for (const path of [...read, '/help', '/offline', '/nowhere']) {
				await page.goto(path);
				await look(path, page);
			}
			for (const name of ['weather', 'outing', 'health']) {
				await page.goto(`/safety/${name}`);
				await look(`/safety/${name}`, page);
			}
			await page.goto('/safety/weather');
			await press(page, 'What does it mean today?');
			await look('/safety/weather: issue', page);
			await page.goto('/methods/by-hand');
			await look('/methods/by-hand', page);
			await press(page, 'Check my sums');
			await look('/methods/by-hand: issues', page);
			for (const path of ['/learn', '/learn/scale', '/learn/one-breath', '/learn/teach']) {
				await page.goto(path);
				await look(path, page);
			}
			await page.goto('/learn/talk');
			await ready(page);
			await look('/learn/talk', page);
			await page.getByRole('button', { name: 'Start reading' }).click();
			await look('/learn/talk: reading', page);
			await page.goto('/screening/result');
			await look('result: none yet', page);
			await page.goto('/account');
			await ready(page);
			await look('account: none', page);
			await page.goto('/account/gone');
			await look('account: gone', page);
			await page.goto('/link');
			await ready(page);
			await look('link', page);
			await press(page, 'Use this code');
			await look('link: issue', page);
			await page.goto('/emergency-number');
			await look('emergency number', page);
			await page.getByLabel('Another number').check();
			await press(page, 'Keep this number');
			await look('emergency number: issue', page);
		}
	},
	{
		name: 'the urgent question and the consent',
		async go({ page }, look) {
			await page.goto('/screening');
			await ready(page);
			await look('urgent', page);
			await press(page, 'Next question');
			await look('urgent: issue', page);
			await page.goto('/screening');
			await ready(page);
			await page.getByRole('checkbox').first().check();
			await look('urgent: ticked', page);
			await press(page, 'Go on');
			await look('emergency: not stored', page);
			await page.goto('/emergency-number?from=emergency');
			await page.getByRole('radio').first().check();
			await press(page, 'Keep this number');
			await look('emergency: number chosen', page);
			await page.goto('/safety');
			await look('safety: number chosen', page);
			await page.goto('/screening');
			await ready(page);
			await page.getByLabel('None of these').check();
			await press(page, 'Next question');
			await look('consent', page);
			await press(page, 'Start the questions');
			await look('consent: issue', page);
		}
	},
	{
		name: 'the questions',
		async go({ page, phone }, look) {
			await phone.begin();
			for (const [n, kind] of [
				[2, 'number'],
				[3, 'one choice'],
				[10, 'several choices']
			] as const) {
				await page.goto(`/screening/questions/${n}`);
				await look(`question: ${kind}`, page);
				await press(page, 'Next question');
				await look(`question: ${kind}, issue`, page);
			}
			await answer(phone, allButOne);
			await page.goto('/screening/check');
			await look('check: one missing', page);
			await press(page, 'See my result');
			await look('check: one missing, sent', page);
			await page.goto('/screening/questions/2?from=check');
			await look('question: from the check page', page);
			await answer(phone, { ...baseline, 'act.days': 0, 'meds.long': 'yes' });
			await answer(phone, { 'meds.why': 'told' });
			await page.goto('/screening/check');
			await look('check: answers that do not fit', page);
			await answer(phone, baseline);
			await page.goto('/screening/check');
			await press(page, 'See my result');
			await look('check: issue', page);
		}
	},
	...Object.entries({ ...leadsTo, walkPlan: { 'plan.effort': 'walk' } }).map(
		([result, changes]): Walk => ({
			name: `the result: ${result}`,
			async go({ page, phone }, look) {
				await phone.screen(changes as Answers);
				await page.goto('/screening/result');
				await look(`result: ${result}`, page);
				await page.goto('/');
				await look(`start: ${result}`, page);
				await page.goto('/bands');
				if (!page.url().endsWith('/bands')) return;
				await ready(page);
				await look(`bands: ${result}`, page);
				await page.goto('/methods/yours');
				await look(`your own numbers: ${result}`, page);
				await phone.measureResting(68, today());
				await page.goto('/bands');
				await ready(page);
				await look(`bands: ${result}, with a resting pulse`, page);
				await page.goto('/methods/yours');
				await look(`your own numbers: ${result}, with a resting pulse`, page);
			}
		})
	),
	{
		name: 'pulses that are not used',
		async go({ page, phone }, look) {
			await phone.screen();
			await phone.measureResting(39, today());
			await page.goto('/bands/resting-pulse');
			await look('resting pulse: measure again', page);
			await page.goto('/bands');
			await look('bands: measure again', page);
			await phone.measureResting(38, plusDays(today(), -1));
			await page.goto('/bands/resting-pulse');
			await look('resting pulse: ask first', page);
			await page.goto('/screening/result');
			await look('result: two mornings outside', page);
			await phone.screen(leadsTo.byTalk);
			await page.goto('/bands/resting-pulse');
			await look('resting pulse: off', page);
			await page.goto('/prompter/strap');
			await look('strap: pulse off', page);
			await phone.screen(leadsTo.askFirst);
			await phone.send('/screening/advice?/record', { ...advice, scope: 'none', givenOn: today() });
			await page.goto('/screening/result');
			await look('result: advice says nothing yet', page);
		}
	},
	{
		name: 'under eighteen, ended and changed',
		async go({ page, phone, house }, look) {
			await phone.begin();
			await page.goto('/screening/questions/2');
			await page.getByLabel('How old').fill('17');
			await press(page, 'Next question');
			await look('under eighteen', page);
			await phone.screen(leadsTo.askFirst);
			await phone.send('/screening?/answer', { urgent: 'none' });
			await answer(phone, baseline);
			await page.goto('/screening/check');
			await page.getByLabel('My answers are true').check();
			await press(page, 'See my result');
			await look('changed', page);
			await press(page, 'Go on to my result');
			await look('changed: issue', page);
			await phone.send('/screening/changed', { why: 'mistake' });
			await page.waitForLoadState('networkidle');
			await house.reopen({ daysAhead: 366 });
			await page.goto('/screening/result');
			await look('result: ended', page);
			await page.waitForLoadState('networkidle');
			await house.reopen({});
			await page.goto('/screening/change');
			await look('change', page);
			await press(page, 'End my result');
			await page.goto('/screening/result');
			await look('result: answer again', page);
		}
	},
	{
		name: 'an urgent sign, stored',
		async go({ page, phone }, look) {
			await phone.screen();
			await page.goto('/screening');
			await ready(page);
			await page.getByRole('checkbox').first().check();
			await press(page, 'Go on');
			await look('emergency: stored', page);
			await page.goto('/screening/result');
			await look('result: after an urgent sign', page);
			await page.goto('/screening/emergency');
			await press(page, 'I ticked this by mistake');
			await look('emergency: asking twice', page);
			await press(page, 'Yes, I have none of them');
			await look('emergency: taken back', page);
		}
	},
	{
		name: 'a doctor asked',
		async go({ page, phone }, look) {
			await phone.screen(leadsTo.askFirst);
			await page.goto('/screening/doctor');
			await ready(page);
			await look('doctor', page);
			await page.goto('/screening/advice');
			await look('advice', page);
			await press(page, 'Keep this advice');
			await look('advice: issues', page);
			await phone.send('/screening/advice?/record', { ...advice, givenOn: today() });
			await page.goto('/screening/result');
			await look('result: lifted by advice', page);
			await page.goto('/screening/doctor');
			await ready(page);
			await look('doctor: covered by advice', page);
			await page.goto('/screening/advice');
			await look('advice: on file', page);
		}
	},
	{
		name: 'ill today',
		async go({ page, phone }, look) {
			await phone.screen(leadsTo.notToday);
			await page.goto('/screening/well');
			await look('well again', page);
			await press(page, 'Send');
			await look('well again: issues', page);
			await page.getByLabel('No, not yet').check();
			await page.getByLabel('No', { exact: true }).check();
			await press(page, 'Send');
			await look('well again: still ill', page);
		}
	},
	{
		name: 'lessons that ask for effort',
		async go({ page, phone }, look) {
			await phone.screen();
			await phone.measureResting(68, today());
			await page.goto('/learn/edge');
			await ready(page);
			await look('edge', page);
			await page.getByRole('button', { name: 'Start the stretch' }).click();
			await look('edge: clock', page);
			await press(page, 'That was it');
			await ready(page);
			await look('edge: issues', page);
			for (const level of ['Comfortable', 'With breaths']) {
				await page.getByRole('radio', { name: level }).check();
				await page.getByLabel('How did it feel?').selectOption('5');
				await press(page, 'That was it');
				await ready(page);
				await look(`edge: ${level}`, page);
			}
			await page.goto('/learn/guess');
			await ready(page);
			await look('guess', page);
			await press(page, 'Keep my guess');
			await ready(page);
			await look('guess: issues', page);
			const made = { phase: 'recovery-walk', effort: 5, pulse: 120 };
			const seen = { talk: 'comfortable', method: '15', beats: 33 };
			for (let n = 0; n < 6; n++) {
				await phone.lead('/learn/guess?/guess', made);
				await phone.lead('/learn/guess?/look', seen);
			}
			await page.goto('/learn/guess');
			await ready(page);
			await look('guess: six of them', page);
			await phone.lead('/learn/guess?/guess', made);
			await page.goto('/learn/guess');
			await ready(page);
			await look('guess: look', page);
			await page.goto('/learn/talk/moving');
			await look('talk: while walking', page);
			await page.goto('/learn/one-breath/moving');
			await press(page, 'See my share');
			await look('one breath: issues', page);
			await page.getByLabel('Count at rest').fill('20');
			await page.getByLabel('Count while moving').fill('9');
			await press(page, 'See my share');
			await look('one breath: share', page);
		}
	},
	{
		name: 'cards, and outings of one’s own',
		async go({ page, phone }, look) {
			await phone.screen();
			await phone.measureResting(68, today());
			await page.goto('/bands/card');
			await ready(page);
			await look('cards', page);
			await page.goto('/outings');
			await look('outings: none yet', page);
			const own = await phone.lead('/outings?/make');
			await page.goto('/outings');
			await look('outings', page);
			await page.goto(own);
			await ready(page);
			await look('an outing of one’s own', page);
		}
	},
	{
		name: 'past outings, and the morning after',
		async go({ page, phone }, look) {
			await page.goto('/past');
			await look('past: nobody', page);
			await phone.screen();
			await page.goto('/past');
			await look('past: none yet', page);
			const place = await didAnOuting(phone);
			await page.goto('/past');
			await look('past: the morning after', page);
			await press(page, 'Keep this');
			await look('past: issue', page);
			await page.goto('/bands');
			await ready(page);
			await look('bands: the morning after', page);
			await page.getByLabel('New pain').check();
			await press(page, 'Keep this');
			await page.goto('/past');
			await look('past: pain stands', page);
			await page.goto('/bands');
			await ready(page);
			await look('bands: pain stands', page);
			await page.goto('/past/progress');
			await look('past: how it changes', page);
			await page.goto(place);
			await look('past: one outing', page);
			await press(page, 'Delete it');
			await look('past: one outing, issue', page);
			await phone.screen(leadsTo.askFirst);
			await page.goto(place);
			await look('past: one outing, gate closed', page);
		}
	},
	{
		name: 'an outing in the hand',
		async go({ page, phone }, look) {
			await page.goto('/prompter');
			await ready(page);
			await page.getByText('The prompter is closed').waitFor();
			await look('prompter: closed', page);
			await phone.screen();
			await phone.measureResting(68, today());
			await page.goto('/prompter');
			const tap = (name: string) => page.getByRole('button', { name, exact: true }).click();
			await tap('Take this one: The plain outing');
			await look('prompter: questions of the day', page);
			await tap('Go on');
			await look('prompter: questions of the day, issue', page);
			for (const [n, name] of ['Yes', 'No', 'No'].entries()) {
				await page.getByRole('group').nth(n).getByLabel(name).check();
			}
			await tap('Go on');
			await page.getByLabel('On a treadmill').check();
			await page.getByLabel('It is hot today').check();
			await tap('Start');
			await look('prompter: ready, issue', page);
			await page.getByLabel('I have read this').check();
			await tap('Start');
			await look('prompter: on', page);
			await tap('Skip this part');
			await page.getByText('Skip this part').waitFor();
			await tap('End early');
			await look('prompter: ending', page);
			await tap('Stay in the outing');
			await tap('Something feels wrong');
			await look('prompter: something is wrong', page);
			await tap('Sharp, new or growing pain, nothing else');
			await tap('End early');
			await tap('End now');
			await look('prompter: over', page);
		}
	},
	{
		name: 'about you, the resting pulse and the account',
		async go({ page, phone }, look) {
			await phone.screen();
			await page.goto('/bands/about-you');
			await look('about you', page);
			await page.getByLabel('Height').fill('1.75 m');
			await page.getByLabel('Weight').fill('4');
			await press(page, 'Keep this');
			await look('about you: issues', page);
			await page.goto('/bands/walk-check');
			await ready(page);
			await look('walk check', page);
			await press(page, 'Work it out');
			await ready(page);
			await look('walk check: issues', page);
			await page.goto('/bands/walk-check');
			await ready(page);
			await page.getByText('Something feels wrong').click();
			await look('walk check: something feels wrong', page);
			await page.getByRole('button', { name: 'Begin, with the clock' }).click();
			await look('walk check: warm-up', page);
			await page.getByRole('button', { name: 'I have walked' }).click();
			await page.getByLabel('Speed on the display').fill('4.5');
			await look('walk check: speed', page);
			await page.getByRole('button', { name: 'Start three minutes' }).click();
			await look('walk check: walking', page);
			await page.getByRole('button', { name: 'End it' }).click();
			await page.goto('/bands/mile-walk');
			await ready(page);
			await look('mile walk', page);
			await page.getByRole('button', { name: 'Start the mile' }).click();
			await look('mile walk: going', page);
			await page.getByRole('button', { name: 'The mile is done' }).click();
			await look('mile walk: counting', page);
			await press(page, 'Work it out');
			await ready(page);
			await look('mile walk: issues', page);
			await page.goto('/bands/resting-pulse');
			await ready(page);
			await look('resting pulse', page);
			await press(page, 'Add this morning');
			await look('resting pulse: issue', page);
			await phone.measureResting(68, today());
			for (const way of ['Chest strap', 'Tap along', 'Count 10 s']) {
				await page.goto('/prompter/strap');
				await page.getByRole('button', { name: way }).click();
				await look(`strap: ${way}`, page);
			}
			await page.goto('/bands/resting-pulse');
			await ready(page);
			await look('resting pulse: one morning', page);
			await page.getByRole('button', { name: 'Start counting' }).click();
			await look('resting pulse: counting', page);
			await page.goto('/account');
			await ready(page);
			await look('account', page);
			await press(page, 'Make a code');
			await ready(page);
			await look('account: code', page);
			await press(page, 'Delete everything now');
			await look('account: issue', page);
		}
	}
];
