import { fail } from '@sveltejs/kit';
import { byHandForm } from '$lib/forms/by-hand.ts';
import { readForm } from '$lib/forms/read-form.ts';
import type { Actions } from './$types';
import { worked } from './worked-example.ts';

/** Whoever rounds on the way ends up to a beat away. Common practice, no source. */
const ROUNDED_ON_THE_WAY = 1;

const steps = ['maximum', 'reserve', 'low', 'high'] as const;

export const actions: Actions = {
	/** Checks sums about an invented person: no number of the reader's is worked out here. */
	default: async ({ request }) => {
		const read = readForm(await request.formData(), byHandForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values, right: false });
		const { value } = read;
		const values = Object.fromEntries(steps.map((step) => [step, String(value[step])]));
		const issues = steps
			.filter((step) => Math.abs(value[step] - worked.answers[step]) > ROUNDED_ON_THE_WAY)
			.map((field) => ({ field, code: 'not-this' }));
		if (issues.length > 0) return fail(400, { issues, values, right: false });
		return { issues, values, right: true };
	}
};
