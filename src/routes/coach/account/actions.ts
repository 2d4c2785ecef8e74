import { fail, redirect, type Actions, type RequestEvent } from '@sveltejs/kit';
import { deleteForm } from '$lib/forms/account.ts';
import { aboutCoachForm, changePasswordForm, signUpSettingForm } from '$lib/forms/coach-account.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as invitations from '$lib/server/coach-invitations.ts';
import { leave } from '$lib/server/coach-leaving.ts';
import * as coaches from '$lib/server/coaches.ts';
import * as hosting from '$lib/server/hosting.ts';
import * as houseSettings from '$lib/server/house-settings.ts';
import * as passkeys from '$lib/server/passkeys.ts';
import * as sessions from '$lib/server/sessions.ts';
import { notFound } from '../../not-found.ts';
import { typedIn } from '../read-coach-form.ts';

const PAGE = '/coach/account';

/** The door lets only coaches in; this says so to the compiler, too. */
function needCoach({ locals }: RequestEvent) {
	const { house, coach, now } = locals;
	if (coach === null) redirect(303, '/coach/sign-in');
	return { house, database: house.database, coach, coachId: coach.coachId, now };
}

/** What only the host decides is not there for anybody else. */
async function needHost(event: RequestEvent) {
	const needed = needCoach(event);
	if (!(await hosting.isHost(needed.database, needed.coachId))) notFound();
	return needed;
}

async function idIn({ request }: RequestEvent): Promise<string> {
	const id = (await request.formData()).get('id');
	return typeof id === 'string' ? id : '';
}

export const actions = {
	about: async (event) => {
		const { database, coachId } = needCoach(event);
		const form = await event.request.formData();
		const read = readForm(form, aboutCoachForm);
		if (!read.ok) return fail(400, { issues: read.issues, values: typedIn(form) });
		await coaches.change(database, coachId, read.value);
		redirect(303, `${PAGE}?kept=about`);
	},
	password: async (event) => {
		const { house, coach, now } = needCoach(event);
		const read = readForm(await event.request.formData(), changePasswordForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		const { current, password } = read.value;
		const answer = await house.auth.changePassword(coach, current, password, now);
		if (answer === 'changed') redirect(303, `${PAGE}?kept=password#password-part`);
		if (answer === 'too-many') {
			return fail(429, { issues: [{ field: 'current', code: 'too-many' }] });
		}
		const issue =
			answer === 'wrong'
				? { field: 'current', code: 'wrong' }
				: { field: 'password', code: answer.issue };
		return fail(400, { issues: [issue] });
	},
	signOutDevice: async (event) => {
		const { database, coachId, now } = needCoach(event);
		const done = await sessions.revoke(database, coachId, await idIn(event), now);
		if (done === 'not-found') notFound();
		redirect(303, `${PAGE}#devices`);
	},
	signOutOthers: async (event) => {
		const { database, coach, now } = needCoach(event);
		await sessions.revokeOthers(database, coach.coachId, coach.sessionId, now);
		redirect(303, `${PAGE}#devices`);
	},
	removePasskey: async (event) => {
		const { database, coachId, now } = needCoach(event);
		const done = await passkeys.remove(database, coachId, await idIn(event), now);
		if (done === 'not-found') notFound();
		redirect(303, `${PAGE}#passkeys`);
	},
	signUp: async (event) => {
		const { database, coachId } = await needHost(event);
		const read = readForm(await event.request.formData(), signUpSettingForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		await houseSettings.setSignUp(database, coachId, read.value.signUp);
		redirect(303, `${PAGE}?kept=house#house`);
	},
	invite: async (event) => {
		const { database, coachId, now } = await needHost(event);
		const made = await invitations.create(database, coachId, null, now);
		if (made === null) notFound();
		const link = `${event.url.origin}/coach/invited/${made.token}`;
		return { invited: { link, expiresAt: made.expiresAt } };
	},
	revokeInvitation: async (event) => {
		const { database, coachId, now } = await needHost(event);
		const done = await invitations.revoke(database, coachId, await idIn(event), now);
		if (done === 'not-found') notFound();
		redirect(303, `${PAGE}#invitations`);
	},
	handOver: async (event) => {
		const { database, coachId } = await needHost(event);
		if ((await hosting.handOver(database, coachId, await idIn(event))) === 'not-found') notFound();
		redirect(303, PAGE);
	},
	signOut: async (event) => {
		const { house } = needCoach(event);
		await house.auth.signOut(event.request.headers);
		redirect(303, '/coach/sign-in?note=out');
	},
	delete: async (event) => {
		const { house, database, coachId } = needCoach(event);
		const read = readForm(await event.request.formData(), deleteForm);
		if (!read.ok) return fail(400, { issues: read.issues });
		const answer = await leave(database, coachId);
		// The page names what has to be done first.
		if (answer !== 'left') redirect(303, `${PAGE}#delete`);
		await house.auth.signOut(event.request.headers);
		redirect(303, '/coach/gone');
	}
} satisfies Actions;
