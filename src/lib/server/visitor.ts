import type { Cookies } from '@sveltejs/kit';
import { LOCALE } from '$words/locale.ts';
import type { Signed } from './auth.ts';
import type { House } from './open-house.ts';
import * as settings from './settings.ts';

const KEPT_SECONDS = 400 * 24 * 60 * 60;

/** What somebody chose that is not about health: in the account where there is one, else a cookie. */
export interface Visitor {
	/** The emergency number that they chose themselves; what a page shows is `numberToCall`. */
	readonly chosenNumber: string | null;
	readonly timeZone: string;
	readonly settings: settings.Settings;
}

export async function visitor(
	house: House,
	runner: Signed | null,
	cookies: Cookies
): Promise<Visitor> {
	const kept =
		runner === null ? settings.UNSET : await settings.load(house.database, runner.runnerId);
	const number = cookies.get('emergency_number') ?? null;
	return {
		chosenNumber: kept.emergencyNumber ?? (number && /^\+?\d{2,15}$/.test(number) ? number : null),
		timeZone: kept.timeZone ?? zoneOf(cookies.get('time_zone')),
		settings: kept
	};
}

/** Keeps a choice on this phone for as long as browsers allow. */
export function keep(
	cookies: Cookies,
	name: 'emergency_number' | 'theme',
	value: string,
	secure: boolean
) {
	cookies.set(name, value, { path: '/', maxAge: KEPT_SECONDS, sameSite: 'lax', secure });
}

const INVITED = 'invited_to';
/** As long as open answers are kept. */
const INVITED_SECONDS = 7 * 24 * 60 * 60;

/** Remembers a group's invitation while somebody answers the questions that come before joining. */
export function keepInvitation(cookies: Cookies, token: string, secure: boolean): void {
	cookies.set(INVITED, token, {
		path: '/',
		maxAge: INVITED_SECONDS,
		httpOnly: true,
		sameSite: 'lax',
		secure
	});
}

export const invitedTo = (cookies: Pick<Cookies, 'get'>): string | null =>
	cookies.get(INVITED) ?? null;

export function forgetInvitation(cookies: Pick<Cookies, 'get' | 'delete'>): void {
	if (cookies.get(INVITED) !== undefined) cookies.delete(INVITED, { path: '/' });
}

/** A shared phone keeps nothing of the person who leaves it. */
export function forgetPhone(cookies: Pick<Cookies, 'delete'>): void {
	for (const name of ['emergency_number', 'time_zone', 'theme', INVITED]) {
		cookies.delete(name, { path: '/' });
	}
	cookies.delete('no_urgent_sign', { path: '/screening' });
}

/** The zone that the browser named, if it exists; else that of the server. */
function zoneOf(named: string | undefined): string {
	if (named) {
		try {
			return new Intl.DateTimeFormat(LOCALE, { timeZone: named }).resolvedOptions().timeZone;
		} catch {
			// A zone that this server does not know is as good as none.
		}
	}
	return new Intl.DateTimeFormat(LOCALE).resolvedOptions().timeZone;
}
