import { recordAdvice } from './advice.ts';
import { expect, test } from './test.ts';
import { leadsTo, type Answers } from './walk.ts';

const ROLES = [
	'doctor',
	'nurse',
	'physiotherapist',
	'midwife',
	'pharmacist',
	'exercise-professional'
];

// Our own rule, common practice, no source: a sign of illness needs a doctor; the rest goes to those
// who treat it.
const mayCover: readonly (readonly [string, Answers, string, readonly string[]])[] = [
	['a sign of illness', leadsTo.askFirst, 'R-SIGN-ANKLES', ['doctor']],
	['a condition', { 'limits.set': ['avoid'] }, 'R-TOLD-LIMIT', ['doctor', 'nurse']],
	['an injury', leadsTo.askAboutInjury, 'R-JOINT', ['doctor', 'physiotherapist']],
	[
		'a pregnancy',
		{ 'preg.status': 'pregnant', 'preg.ok': 'not_sure' },
		'R-PREG-ASK',
		['doctor', 'midwife']
	],
	[
		'age',
		leadsTo.mayWalk,
		'R-AGE-45',
		['doctor', 'nurse', 'physiotherapist', 'midwife', 'exercise-professional']
	]
];

for (const [kind, answers, covers, allowed] of mayCover) {
	test(`${kind} is covered by ${allowed.join(', ')}, and by nobody else`, async ({ phone }) => {
		await phone.screen(answers);
		const before = await phone.result();
		for (const role of ROLES.filter((one) => !allowed.includes(one))) {
			const answer = await recordAdvice(phone, { role, covers });
			expect(answer.status(), role).toBe(400);
			expect(await answer.text()).toContain('This person cannot cover that reason.');
			expect(await phone.result()).toBe(before);
		}
		for (const role of allowed) {
			expect((await recordAdvice(phone, { role, covers })).status(), role).toBe(303);
			expect(await phone.result()).toMatch(
				/^From what you told us, you (may run|begin by walking)/
			);
			const page = await (await phone.get('/screening/advice')).text();
			const id = /name="id" value="([^"]+)"/.exec(page)?.[1] ?? '';
			await phone.lead('/screening/advice?/remove', { id });
			expect(await phone.result(), 'advice that is removed lifts nothing').toBe(before);
		}
	});
}
