import { describe, expect, it } from 'vitest';
import * as audit from '$lib/server/audit.ts';
import * as contacts from '$lib/server/contacts.ts';
import * as groupOutings from '$lib/server/group-outings.ts';
import * as groups from '$lib/server/groups.ts';
import * as memberships from '$lib/server/memberships.ts';
import * as readings from '$lib/server/readings.ts';
import { openVault, VaultClosed } from '$lib/server/vault.ts';
import { enter, makeCoach, makeGroup, makeHelper, nameAlone } from './coached-group.ts';
import { DATABASES, freshKey, inHouse, MINUTE, NOW } from './in-house.ts';

const SISTER = { name: "Maeve O'Neill", phone: '+353871234567', relation: 'sister' };

describe.each(DATABASES)('an emergency contact on %s', (type) => {
	const here = inHouse(type);

	async function inGroup() {
		const coach = await makeCoach(here);
		const groupId = await makeGroup(here, coach);
		const group = await groups.ofCoach(here.database, coach.coachId, groupId);
		if (!group) throw new Error('no group');
		const runner = await here.runner();
		const memberId = await enter(here, groupId, runner, 'Ines');
		return { coach, group, runner, memberId };
	}

	type At = Awaited<ReturnType<typeof inGroup>>;
	const keep = ({ runner }: At, contact = SISTER) =>
		contacts.keep(here.database, here.vault, runner, contact, NOW);
	const ask = ({ coach, group, memberId }: At, now = NOW) =>
		contacts.forCoach(here.database, here.vault, { coach, group }, memberId, now);
	const start = ({ coach, group }: At) =>
		groupOutings.start(here.database, coach.coachId, group.id, NOW);

	it('is kept for the runner, locked, and the newest counts', async () => {
		const at = await inGroup();
		expect(await contacts.own(here.database, here.vault, at.runner)).toBeNull();
		await keep(at);
		await keep(at, { ...SISTER, name: 'راشد' });
		expect(await contacts.own(here.database, here.vault, at.runner)).toEqual({
			...SISTER,
			name: 'راشد'
		});
		const rows = await here.database.selectFrom('emergency_contact').selectAll().execute();
		expect(JSON.stringify(rows)).not.toMatch(/353871234567|sister/);
		await contacts.remove(here.database, at.runner, NOW);
		expect(await contacts.own(here.database, here.vault, at.runner)).toBeNull();
	});

	it('is shown to a coach of the group while an outing is on, and at no other time', async () => {
		const at = await inGroup();
		await keep(at);
		expect(await ask(at)).toBeNull();
		await start(at);
		expect(await ask(at)).toEqual({ memberName: 'Ines', contact: SISTER, isUnreadable: false });
		expect(await ask(at, NOW + 4 * 60 * MINUTE)).toBeNull();
		await groupOutings.end(here.database, at.coach.coachId, at.group.id, NOW);
		expect(await ask(at)).toBeNull();
	});

	it('that cannot be read is said to be so, and is no "gave nobody"', async () => {
		const at = await inGroup();
		await keep(at);
		await start(at);
		await here.database
			.updateTable('emergency_contact')
			.set({ sealed: 'spoilt' })
			.where('runner_id', '=', at.runner)
			.execute();
		expect(await ask(at)).toEqual({ memberName: 'Ines', contact: null, isUnreadable: true });
		// Nothing was read.
		expect(await readings.list(here.database, at.runner)).toEqual([]);
	});

	it('is written down for the runner each time that it is shown', async () => {
		const at = await inGroup();
		await keep(at);
		await start(at);
		await ask(at, NOW + MINUTE);
		await ask(at, NOW + 2 * MINUTE);
		const read = await readings.list(here.database, at.runner);
		expect(read.map(({ what, at: when }) => [what, when])).toEqual([
			['contact', NOW + 2 * MINUTE],
			['contact', NOW + MINUTE]
		]);
		expect(read[0]).toMatchObject({ coachName: 'Odile Marr', groupName: at.group.name });
		const what = (await audit.list(here.database, at.runner)).map((entry) => entry.what);
		expect(what.filter((one) => one === 'contact.read')).toHaveLength(2);
	});

	it('that nobody gave is said, and no reading written', async () => {
		const at = await inGroup();
		await start(at);
		expect(await ask(at)).toEqual({ memberName: 'Ines', contact: null, isUnreadable: false });
		expect(await readings.list(here.database, at.runner)).toEqual([]);
	});

	it('is seen by a helper, and by no other coach', async () => {
		const [at, other] = [await inGroup(), await inGroup()];
		await keep(at);
		await start(at);
		await start(other);
		const helper = await makeHelper(here, at.group.id);
		expect(await ask({ ...at, coach: helper })).toMatchObject({ contact: SISTER });
		expect(await ask({ ...at, coach: other.coach })).toBeNull();
		expect(await ask({ ...other, memberId: at.memberId })).toBeNull();
	});

	it('is gone with sharing, and with leaving', async () => {
		const at = await inGroup();
		await keep(at);
		await start(at);
		await memberships.share(here.database, at.runner, at.memberId, false, NOW);
		expect(await ask(at)).toBeNull();
		await memberships.share(here.database, at.runner, at.memberId, true, NOW);
		expect(await ask(at)).not.toBeNull();
		await memberships.leave(here.database, at.runner, at.memberId, NOW);
		expect(await ask(at)).toBeNull();
	});

	it('is none for a name alone', async () => {
		const at = await inGroup();
		await start(at);
		const memberId = await nameAlone(here, at.group.id, 'Tobias');
		expect(await ask({ ...at, memberId })).toBeNull();
	});

	it('stays shut with the wrong key', async () => {
		const at = await inGroup();
		await keep(at);
		await start(at);
		const wrong = await openVault(here.database, freshKey());
		const { coach, group, memberId } = at;
		await expect(
			contacts.forCoach(here.database, wrong, { coach, group }, memberId, NOW)
		).rejects.toThrow(VaultClosed);
		expect(await readings.list(here.database, at.runner)).toEqual([]);
	});
});
