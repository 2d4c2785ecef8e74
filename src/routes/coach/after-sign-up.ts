import { fail, redirect } from '@sveltejs/kit';
import type { SignUpAnswer, SignUpWords } from '$lib/server/coach-sign-up.ts';

/** Where a sign-up leads. A new coach signs in once more, so that a taken e-mail looks the same. */
export function afterSignUp(
	answer: SignUpAnswer,
	{ name, qualification, email }: Omit<SignUpWords, 'password'>,
	note: 'made' | 'invited' = 'made'
) {
	if (answer === 'host') redirect(303, '/coach');
	if (answer === 'made') redirect(303, `/coach/sign-in?note=${note}`);
	const values = { name, qualification: qualification ?? '', email };
	if (typeof answer === 'object') {
		return fail(400, { issues: [{ field: 'password', code: answer.issue }], values });
	}
	const status = answer === 'too-many' ? 429 : 403;
	return fail(status, { refused: answer, issues: [], values });
}
