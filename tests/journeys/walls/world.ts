import type { APIRequestContext } from '@playwright/test';
import { programmeWishes } from './programme-wishes.ts';
import { plusDays, todayIn } from '../days.ts';
import type { House } from '../house.ts';
import { didAnOuting } from '../past-outing.ts';
import { LanternStreet } from '../lantern-street.ts';
import { Phone } from '../phone.ts';
import { leadsTo } from '../walk.ts';
import { adviceIn, idsIn, memberIn } from './ids.ts';
import type { Ids, Person } from './wall.ts';

/** A group with its people, beside it another group with its own, and one of everything. */
export interface World {
	readonly ids: Ids;
	/** Through which the other coach asks for what is Odile's. */
	readonly otherGroup: string;
	/** The cookies of each person. */
	readonly cookies: Readonly<Record<Person, string>>;
	/** Of a browser that a helper shared for the group. */
	readonly tabletCookie: string;
	/** What whoever holds that tablet may know: whose it is. */
	readonly toldOnTablet: readonly string[];
	/** Who somebody is. */
	readonly self: Readonly<Partial<Record<Person, readonly string[]>>>;
	/** What only Ines, Odile and their group have: nobody else may read one of these. */
	readonly marks: readonly string[];
}

const ZONE = 'Europe/Dublin';
const PASSWORD = 'four green umbrellas';
/** Of nobody else. */
const NAMES = ['Ines Quillon', 'Maeve Quillon', 'Lantern Street beginners', 'Odile Marr'];

export async function makeWorld(
	house: House,
	open: () => Promise<APIRequestContext>
): Promise<World> {
	const phone = async () => new Phone(await open(), house.url);
	const today = todayIn(ZONE);

	const host = await phone();
	await coachOf(host, 'Hana Orme', '/coach/sign-up', '');
	await host.lead('/coach/account?/signUp', { signUp: 'open' });
	const lantern = await LanternStreet.found(await phone());
	const owner = lantern.coach;
	const otherCoach = await phone();
	await coachOf(otherCoach, 'Cleo Tarn', '/coach/sign-up', '');
	const otherGroup = await otherCoach.lead('/coach/new', {
		name: 'Mill Lane walkers',
		timeZone: ZONE,
		units: 'km/h',
		paceUnits: 'min/km',
		emergencyNumber: '112'
	});
	await host.lead('/coach/account?/signUp', { signUp: 'invitation' });
	const helper = await phone();
	await coachOf(helper, 'Bram Holt', await invitationOf(owner, lantern.path), '?/signUp');
	const coachLinkToken = (await invitationOf(owner, lantern.path)).split('/').at(-1) ?? '';
	await host.send('/coach/account?/invite');

	const runner = await phone();
	await runner.screen(leadsTo.askFirst);
	const advice = { role: 'doctor', covers: 'R-SIGN-ANKLES', scope: 'walkrun', limitBpm: '' };
	await runner.lead('/screening/advice?/record', { ...advice, givenOn: today });
	await keepOfRunner(runner, today);
	await runner.lead(lantern.link, { name: 'Ines Quillon', agree: 'yes' });
	await runner.lead('/bands?/doubt', { phase: 'brisk-walk', feels: 'too-hard' });
	const otherRunner = await phone();
	await otherRunner.screen(leadsTo.settlingIn);
	await otherRunner.measureResting(61, today);
	await otherRunner.lead('/bands?/walked');

	await otherRunner.lead(await linkOf(otherCoach, otherGroup), { name: 'Mei-Lin', agree: 'yes' });

	await keepOfGroup(owner, lantern.path, memberIn(house), adviceIn(house));
	const tabletCookie = await shareTablet(await phone(), lantern.path);
	const ids = { ...idsIn(house), coachLinkToken, today };
	const { helper: _helper, houseLink: _houseLink, today: _today, ...theirs } = ids;
	return {
		ids,
		otherGroup: otherGroup.split('/').at(-1) ?? '',
		tabletCookie,
		toldOnTablet: [ids.group, 'Lantern Street beginners', 'Odile Marr'],
		cookies: {
			nobody: '',
			runner: await cookiesOf(runner),
			otherRunner: await cookiesOf(otherRunner),
			owner: await cookiesOf(owner),
			helper: await cookiesOf(helper),
			otherCoach: await cookiesOf(otherCoach),
			host: await cookiesOf(host)
		},
		self: { owner: ['Odile Marr', 'odile@lantern.example', ids.owner, ids.coachSession] },
		marks: [...Object.values(theirs), ...NAMES, 'odile@lantern.example']
	};
}

async function coachOf(phone: Phone, name: string, path: string, action: string) {
	const email = `${name.split(' ')[0]}@lane.example`.toLowerCase();
	await phone.send(path + action, { name, qualification: '', email, password: PASSWORD });
	await phone.lead('/coach/sign-in', { email, password: PASSWORD, stay: 'yes' });
}

/** The helper signs in once more, on the tablet, and is signed out by sharing it. */
async function shareTablet(tablet: Phone, group: string): Promise<string> {
	await tablet.lead('/coach/sign-in', { email: 'bram@lane.example', password: PASSWORD });
	await tablet.lead(`${group}/invite?/tablet`);
	return cookiesOf(tablet);
}

async function invitationOf(owner: Phone, group: string): Promise<string> {
	const page = await (await owner.send(`${group}/settings?/inviteCoach`)).text();
	return /\/coach\/invited\/[\w-]+/.exec(page)?.[0] ?? '';
}

async function linkOf(coach: Phone, group: string): Promise<string> {
	await coach.lead(`${group}/invite?/make`, { endsOn: plusDays(todayIn('UTC'), 20) });
	const page = await (await coach.get(`${group}/invite`)).text();
	return /\/join\/[\w-]+/.exec(page)?.[0] ?? '';
}

async function keepOfRunner(runner: Phone, today: string) {
	await runner.measureResting(68, today);
	await runner.lead('/account?/contact', {
		contactName: 'Maeve Quillon',
		contactPhone: '+353871234567',
		contactRelation: 'sister'
	});
	await runner.lead('/bands?/walked');
	await makeTwoPlans(runner, '/outings');
	await runner.lead('/learn/guess?/guess', { phase: 'brisk-walk', effort: 5, pulse: 118 });
	await didAnOuting(runner, { more: [{ kind: 'pain', level: 'new', where: 'shin' }] });
}

async function keepOfGroup(owner: Phone, group: string, member: string, advice: string) {
	const band = {
		phase: 'brisk-walk',
		lowPercent: 40,
		highPercent: 50,
		effortLow: 4,
		effortHigh: 5
	};
	const bands = `${group}/members/${member}/bands`;
	await owner.lead(`${bands}?/set`, { ...band, runnerNote: 'Gently', innerNote: 'Sore' });
	await owner.lead(`${bands}?/confirm`, { advice });
	await owner.lead(`${group}/bands?/set`, band);
	await makeTwoPlans(owner, `${group}/outings`);
	await owner.lead(`${group}/programme/new?/keep`, programmeWishes());
	await owner.lead(`${group}?/start`);
}

/** Two outings, of which one is removed again. */
async function makeTwoPlans(holder: Phone, library: string) {
	const removed = await holder.lead(`${library}?/make`);
	await holder.lead(`${library}?/make`);
	await holder.lead(`${library}?/remove`, { id: removed.split('/').at(-1) ?? '' });
}

const cookiesOf = async ({ request }: Phone) =>
	(await request.storageState()).cookies.map(({ name, value }) => `${name}=${value}`).join('; ');
