import { fail, redirect } from '@sveltejs/kit';
import { emergencyNumberForm } from '$lib/forms/emergency-number.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as settings from '$lib/server/settings.ts';
import { keep, visitor } from '$lib/server/visitor.ts';
import type { Actions, PageServerLoad } from './$types';

/** Where the page was opened from, and so where it leads back to. */
const comingFrom: Readonly<Record<string, string>> = {
	screening: '/screening',
	emergency: '/screening/emergency',
	safety: '/safety',
	account: '/account'
};

export const load: PageServerLoad = async ({ locals: { house, runner }, cookies, url }) => ({
	chosen: (await visitor(house, runner, cookies)).chosenNumber,
	from: url.searchParams.get('from') ?? ''
});

export const actions: Actions = {
	default: async ({ request, cookies, url, locals: { house, runner } }) => {
		const form = await request.formData();
		const text = (field: string) => {
			const typed = form.get(field);
			return typeof typed === 'string' ? typed.slice(0, 60) : '';
		};
		const [picked, other] = [text('number'), text('other')];
		if (picked === 'other') form.set('number', other);
		const read = readForm(form, emergencyNumberForm);
		if (!read.ok) {
			const values = { picked, other };
			return fail(400, { issues: read.issues, values });
		}
		keep(cookies, 'emergency_number', read.value.number, url.protocol === 'https:');
		if (runner !== null) {
			await settings.save(house.database, runner.runnerId, { emergencyNumber: read.value.number });
		}
		redirect(303, comingFrom[text('from')] ?? '/safety');
	}
};
