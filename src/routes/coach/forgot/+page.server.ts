import { fail } from '@sveltejs/kit';
import { forgotForm } from '$lib/forms/coach-account.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { coachMail } from '$words/coach-account.ts';
import type { Actions, PageServerLoad } from './$types';
import { fromOf, typedIn } from '../read-coach-form.ts';

export const load: PageServerLoad = ({ locals: { house } }) => ({
	hasMail: house.environment.mail !== null
});

export const actions: Actions = {
	default: async (event) => {
		const form = await event.request.formData();
		const read = readForm(form, forgotForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: typedIn(form) });
		const { email } = read.value;
		const write = (link: string) => ({ subject: coachMail.subject, text: coachMail.text(link) });
		const asked = await event.locals.house.auth.requestReset(email, write, fromOf(event));
		if (asked === 'too-many') return fail(429, { issues: [], asked, values: { email } });
		return { asked };
	}
};
