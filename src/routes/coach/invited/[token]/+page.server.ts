import { fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { signInForm, signUpForm } from '$lib/forms/coach-account.ts';
import * as invited from '$lib/server/invited-coaches.ts';
import type { Actions, PageServerLoad } from './$types';
import { afterSignUp } from '../../after-sign-up.ts';
import { fromOf, readCoachForm } from '../../read-coach-form.ts';

export const load: PageServerLoad = async ({ locals, params, url }) => {
	const { house, coach, runner, now } = locals;
	const found = await invited.find(house.database, params.token, now);
	return {
		invitation: found && { invitedBy: found.invitedBy, group: found.group?.name ?? null },
		isCoach: coach !== null,
		runnerHere: runner !== null,
		hasAccount: url.searchParams.has('account')
	};
};

export const actions: Actions = {
	accept: async (event) => {
		const { coach } = event.locals;
		if (coach === null) redirect(303, event.url.pathname);
		return acceptAs(event, coach.coachId);
	},
	signUp: async (event) => {
		const read = await readCoachForm(event, signUpForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { auth } = event.locals.house;
		const token = event.params.token ?? '';
		const answer = await auth.signUpCoach(read.value, token, fromOf(event));
		return afterSignUp(answer, read.value, 'invited');
	},
	signIn: async (event) => {
		const read = await readCoachForm(event, signInForm);
		if (!read.ok) return fail(400, { signIn: { issues: read.issues, values: read.values } });
		const { email, password, stay } = read.value;
		const { auth } = event.locals.house;
		const typed = { email, password, stay: stay === 'yes' };
		const signed = await auth.signInCoach(typed, fromOf(event));
		if (typeof signed === 'object') return acceptAs(event, signed.coachId);
		const values = { email, stay: stay ?? '' };
		const status = signed === 'too-many' ? 429 : 400;
		return fail(status, { signIn: { refused: signed, issues: [], values } });
	}
};

/** Into the group; or, where the invitation does not work, to the page that says so. */
async function acceptAs({ locals, params, url }: RequestEvent, coachId: string): Promise<never> {
	const { house, now } = locals;
	const accepted = await invited.accept(house.database, params.token ?? '', coachId, now);
	if (accepted === null) redirect(303, url.pathname);
	redirect(303, accepted.groupId === null ? '/coach' : `/coach/${accepted.groupId}`);
}
