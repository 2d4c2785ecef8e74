import { fail, redirect } from '@sveltejs/kit';
import { deviceCodeForm } from '$lib/forms/account.ts';
import { readForm } from '$lib/forms/read-form.ts';
import type { Actions } from './$types';

export const actions: Actions = {
	default: async ({ request, locals: { house, now } }) => {
		const form = await request.formData();
		const typed = form.get('code');
		const code = typeof typed === 'string' ? typed.slice(0, 60) : '';
		const read = readForm(form, deviceCodeForm);
		if (!read.ok) return fail(400, { issue: read.issues[0]?.code ?? 'wrong', code });
		const signed = await house.auth.redeemDeviceCode(read.value.code, request.headers, now);
		// The same answer for a wrong, a used and an ended code.
		if (signed === null) return fail(400, { issue: 'wrong', code });
		redirect(303, '/');
	}
};
