import { randomUUID } from 'node:crypto';
import type { APIRequestContext, Page } from '@playwright/test';
import { plusDays, todayIn } from './days.ts';
import { House } from './house.ts';
import { Phone } from './phone.ts';
import { expect, test as base } from './test.ts';
import type { Answers } from './walk.ts';

/** Each phone comes from an address of its own, so that many tests are not taken for many tries. */
export const ADDRESS_HEADER = 'x-phone-address';

const COACH = { name: 'Odile Marr', qualification: 'Run leader, level 2' };
export const SIGN_IN = { email: 'odile@lantern.example', password: 'seven blue kettles' };

/** A made-up group and its coach. */
export class LanternStreet {
	/** Who joined, by name. */
	readonly runners = new Map<string, { phone: Phone; memberId: string }>();

	private constructor(
		readonly coach: Phone,
		readonly groupId: string,
		readonly link: string
	) {}

	static async found(coach: Phone, fields: Record<string, string> = {}): Promise<LanternStreet> {
		await coach.send('/coach/sign-up', { ...COACH, ...SIGN_IN });
		await coach.send('/coach/sign-in', { ...SIGN_IN, stay: 'yes' });
		const path = await coach.lead('/coach/new', {
			name: 'Lantern Street beginners',
			usualPlace: 'Mill park, east gate',
			timeZone: 'Europe/Dublin',
			units: 'km/h',
			paceUnits: 'min/km',
			emergencyNumber: '112',
			meetingPoint: 'East gate, by the clock',
			defibrillator: 'Sports hall, wall right of the door',
			firstAider: 'Bram Holt',
			...fields
		});
		const groupId = path.split('/').at(-1) ?? '';
		await coach.lead(`/coach/${groupId}/invite?/make`, { endsOn: plusDays(todayIn('UTC'), 20) });
		const page = await (await coach.get(`/coach/${groupId}/invite`)).text();
		return new LanternStreet(coach, groupId, /\/join\/[\w-]+/.exec(page)?.[0] ?? '');
	}

	get path(): string {
		return `/coach/${this.groupId}`;
	}

	/** Somebody who answers the questions, measures a resting pulse where one counts, and joins. */
	async join(context: APIRequestContext, name: string, answers: Answers = {}): Promise<Phone> {
		const phone = new Phone(context, this.coach.url);
		await phone.screen(answers);
		await phone.send('/bands/resting-pulse?/add', {
			beats: 68,
			seconds: 60,
			on: todayIn(Intl.DateTimeFormat().resolvedOptions().timeZone)
		});
		await phone.lead(this.link, { name, agree: 'yes' });
		const roster = await (await this.coach.get(this.path)).text();
		const row = new RegExp(`/members/([\\w-]+)"[^>]*><bdi[^>]*>${name}<`).exec(roster);
		expect(row, `${name} is on the list`).not.toBeNull();
		this.runners.set(name, { phone, memberId: row?.[1] ?? '' });
		return phone;
	}

	bandsOf(name: string): string {
		return `${this.path}/members/${this.runners.get(name)?.memberId}/bands`;
	}
}

interface Fixtures {
	/** The page is the coach's at first. */
	readonly lantern: LanternStreet;
	/** Another phone, with cookies of its own. */
	readonly stranger: () => Promise<APIRequestContext>;
}

/** With a house of its own, so that the coach is its first. */
export const test = base.extend<Fixtures, { house: House }>({
	house: [
		async ({}, use) => {
			const house = await House.build({ env: { ADDRESS_HEADER } });
			await use(house);
			await house.tearDown();
		},
		{ scope: 'worker' }
	],
	extraHTTPHeaders: async ({}, use) => {
		await use({ [ADDRESS_HEADER]: randomUUID() });
	},
	lantern: async ({ page, house, stranger }, use) => {
		const lantern = await LanternStreet.found(new Phone(await stranger(), house.url));
		await become(page, lantern.coach);
		await use(lantern);
	},
	stranger: async ({ playwright }, use) => {
		const opened: APIRequestContext[] = [];
		await use(async () => {
			const context = await playwright.request.newContext({
				extraHTTPHeaders: { [ADDRESS_HEADER]: randomUUID() }
			});
			opened.push(context);
			return context;
		});
		for (const context of opened) await context.dispose();
	}
});

/** The same, for a file whose house no other enters: for what nobody could go on in afterwards. */
export const inHouseOfItsOwn = () =>
	test.extend<object, { house: House }>({
		house: [
			async ({}, use) => {
				const house = await House.build({ env: { ADDRESS_HEADER } });
				await use(house);
				await house.tearDown();
			},
			{ scope: 'worker' }
		]
	});

/** Puts the cookies of a phone into the page, so that it is that person's. */
export async function become(page: Page, phone: Phone): Promise<void> {
	await page.context().clearCookies();
	await page.context().addCookies((await phone.request.storageState()).cookies);
}

export { expect };
