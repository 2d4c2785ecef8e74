import { fail, redirect } from '@sveltejs/kit';
import { resetForm } from '$lib/forms/coach-account.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as coaches from '$lib/server/coaches.ts';
import * as resets from '$lib/server/password-resets.ts';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { house, now }, url }) => {
	const token = url.searchParams.get('token') ?? '';
	const coachId = await resets.peek(house.database, token, now);
	if (coachId === null) return { works: false as const };
	const email = await coaches.emailOf(house.database, coachId);
	return { works: true as const, token, email: email ?? '' };
};

export const actions: Actions = {
	default: async ({ request, locals: { house, now } }) => {
		const read = readForm(await request.formData(), resetForm);
		if (!read.ok) return fail(400, { issue: read.issues[0]?.code ?? 'missing' });
		const { token, password } = read.value;
		const answer = await house.auth.resetPassword(token, password, now);
		if (answer === 'changed') redirect(303, '/coach/sign-in?note=changed');
		return fail(400, { issue: typeof answer === 'object' ? answer.issue : null });
	}
};
