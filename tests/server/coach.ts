import type { Kysely } from 'kysely';
import type { Database } from '$lib/server/database/tables.ts';
import type { GroupFields } from '$lib/server/groups.ts';
import { Browser } from './browser.ts';

export const PASSWORD = 'seven blue kettles';

export const words = (email: string) => ({
	name: 'Odile Marr',
	qualification: null,
	email,
	password: PASSWORD
});

export const lanternStreet: GroupFields = {
	name: 'Lantern Street beginners',
	usualPlace: null,
	timeZone: 'Europe/Dublin',
	units: 'km/h',
	paceUnits: 'min/km',
	emergencyNumber: null,
	meetingPoint: null,
	defibrillator: null,
	firstAider: null
};

/** Where a form comes from, as a page would say it. */
export const from = (browser: Browser, now = Date.now(), address = '192.0.2.7') => ({
	headers: browser.headers(),
	address,
	now
});

/** A coach who is signed in, made through the door that the house has open. */
export async function signedIn(
	database: Kysely<Database>,
	email: string,
	invitation: string | null = null,
	more: Partial<ReturnType<typeof words>> = {},
	stay = true
) {
	const browser = new Browser(database);
	const said = { ...words(email), ...more };
	// Each from an address of its own: a test may make many.
	const address = `192.0.2.${email.length}-${email}`;
	await browser.auth.signUpCoach(said, invitation, from(browser, Date.now(), address));
	const typed = { email, password: said.password, stay };
	const signed = await browser.auth.signInCoach(typed, from(browser, Date.now(), address));
	if (typeof signed === 'string') throw new Error(`${email} did not sign in: ${signed}`);
	return { browser, ...signed };
}
