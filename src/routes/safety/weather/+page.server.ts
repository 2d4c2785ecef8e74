import { fail } from '@sveltejs/kit';
import { heatForm } from '$lib/forms/heat.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { heatAction } from '$lib/outing/heat.ts';
import type { Actions, PageServerLoad } from './$types';
import { numberFor } from '../../number-for.ts';

export const load: PageServerLoad = async (event) => ({ emergencyNumber: await numberFor(event) });

export const actions: Actions = {
	/** Weather only: nothing about anybody is asked or stored. */
	default: async ({ request }) => {
		const form = await request.formData();
		const read = readForm(form, heatForm);
		if (!read.ok) {
			return fail(400, { issues: read.issues, values: read.values, action: null });
		}
		const { wetBulb, index, warned } = read.value;
		const action = heatAction({
			wetBulbCelsius: wetBulb,
			heatIndexCelsius: index,
			isWarned: warned === 'yes'
		});
		const values = {
			wetBulb: wetBulb === null ? '' : String(wetBulb),
			index: index === null ? '' : String(index),
			warned: warned ?? ''
		};
		const issues = [{ field: 'wetBulb', code: 'missing' }];
		return action === null ? fail(400, { issues, values, action }) : { issues: [], values, action };
	}
};
