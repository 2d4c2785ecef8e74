import { error, fail, redirect, type RequestEvent } from '@sveltejs/kit';
import { emergencyContactForm, membershipForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';
import * as contacts from '$lib/server/contacts.ts';
import * as memberships from '$lib/server/memberships.ts';
import { faultText } from '$words/faults.ts';

/** What a runner decides over their groups, and whom to call for them. */
export const groupActions = {
	leaveGroup: (event: RequestEvent) =>
		change(event, ({ database, runnerId, memberId, now }) =>
			memberships.leave(database, runnerId, memberId, now)
		),
	share: (event: RequestEvent) =>
		change(event, ({ database, runnerId, memberId, now }) =>
			memberships.share(database, runnerId, memberId, true, now)
		),
	stopSharing: (event: RequestEvent) =>
		change(event, ({ database, runnerId, memberId, now }) =>
			memberships.share(database, runnerId, memberId, false, now)
		),
	contact: async (event: RequestEvent) => {
		const { house, runnerId, now } = needRunner(event);
		const read = readForm(await event.request.formData(), emergencyContactForm);
		if (!read.ok) return fail(400, { contactIssues: read.issues, contactValues: read.values });
		const { contactName: name, contactPhone: phone, contactRelation: relation } = read.value;
		const contact = { name, phone, relation };
		await contacts.keep(house.database, house.vault, runnerId, contact, now);
		redirect(303, '/account#contact');
	},
	removeContact: async (event: RequestEvent) => {
		const { house, runnerId, now } = needRunner(event);
		await contacts.remove(house.database, runnerId, now);
		redirect(303, '/account#contact');
	}
};

function needRunner({ locals: { house, runner, now } }: RequestEvent) {
	if (runner === null) redirect(303, '/account');
	return { house, database: house.database, runnerId: runner.runnerId, now };
}

type Asked = Omit<ReturnType<typeof needRunner>, 'house'> & { readonly memberId: string };

async function change(event: RequestEvent, done: (asked: Asked) => Promise<string>) {
	const { database, runnerId, now } = needRunner(event);
	const read = readForm(await event.request.formData(), membershipForm);
	const answer =
		read.ok && (await done({ database, runnerId, now, memberId: read.value.membership }));
	if (!answer || answer === 'not-found') {
		error(404, { code: 'not-found', message: faultText('not-found') });
	}
	redirect(303, '/account#groups');
}
