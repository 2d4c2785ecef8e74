import type { Cookies } from '@sveltejs/kit';
import { z } from 'zod';
import type { Coach } from './coaches.ts';
import * as drafts from './drafts.ts';
import * as groups from './groups.ts';
import type { House } from './open-house.ts';
import { deleteUnreachable } from './unreachable.ts';
import { Unreadable, VaultClosed, type Place } from './vault.ts';
import { forgetPhone } from './visitor.ts';

/*
 * A tablet that goes round among runners without a phone. A cookie of this browser says for which
 * group; the coach is signed out of it first. It is sealed by the vault, so nobody can write one.
 */

const COOKIE = 'shared_tablet';
const PLACE: Place = { table: 'shared_tablet', owner: 'house', row: 'cookie' };
/** A long club evening. After that a coach turns it on again. */
const LASTS_MS = 12 * 60 * 60 * 1000;

const shape = z.strictObject({ groupId: z.string(), coachId: z.string(), until: z.int() });

export interface SharedTablet {
	readonly groupId: string;
	readonly groupName: string;
}

/** For a coach of the group. Whoever is signed in in this browser has to be signed out by then. */
export async function turnOn(
	{ database, vault }: Pick<House, 'database' | 'vault'>,
	cookies: Cookies,
	coach: Pick<Coach, 'coachId'>,
	groupId: string,
	now: number,
	isSecure: boolean
): Promise<'on' | 'not-found'> {
	if (!(await groups.ofCoach(database, coach.coachId, groupId))) return 'not-found';
	const content = { groupId, coachId: coach.coachId, until: now + LASTS_MS };
	cookies.set(COOKIE, vault.seal(PLACE, content), {
		path: '/',
		maxAge: LASTS_MS / 1000,
		httpOnly: true,
		sameSite: 'lax',
		secure: isSecure
	});
	return 'on';
}

/**
 * The group that this browser is shared for, or null. It ends with its time, with the group, and
 * when the coach who turned it on leaves the group.
 */
export async function of(
	{ database, vault }: Pick<House, 'database' | 'vault'>,
	cookies: Pick<Cookies, 'get'>,
	now: number
): Promise<SharedTablet | null> {
	const sealed = cookies.get(COOKIE);
	if (!sealed) return null;
	try {
		const { groupId, coachId, until } = vault.unseal(PLACE, sealed, shape);
		if (until <= now) return null;
		const group = await groups.ofCoach(database, coachId, groupId);
		return group && { groupId, groupName: group.name };
	} catch (error) {
		if (error instanceof Unreadable || error instanceof VaultClosed) return null;
		throw error;
	}
}

export function turnOff(cookies: Pick<Cookies, 'delete'>): void {
	cookies.delete(COOKIE, { path: '/' });
}

/**
 * Makes the tablet ready for the next one: nothing of this runner stays in the browser. Where they
 * did not join, nothing of them stays at all, for nobody could come back to it.
 */
export async function clear(
	{ database, auth }: Pick<House, 'database' | 'auth'>,
	runner: { readonly runnerId: string } | null,
	{ headers, cookies }: { readonly headers: Headers; readonly cookies: Pick<Cookies, 'delete'> },
	now: number
): Promise<void> {
	forgetPhone(cookies);
	if (runner === null) return;
	await auth.signOut(headers);
	// The next code of theirs begins blank as well.
	await drafts.discard(database, runner.runnerId);
	await deleteUnreachable(database, [runner.runnerId], now);
}

const CODE_COOKIE = 'tablet_code';
const CODE_PLACE: Place = { ...PLACE, row: 'code' };
const CODE_SHOWN_WITHIN_MS = 60 * 1000;
const codeShape = z.strictObject({ groupId: z.string(), code: z.string(), until: z.int() });

/** Hands a code on to the next page of the tablet, which shows it once. */
export function handOn(
	{ vault }: Pick<House, 'vault'>,
	cookies: Pick<Cookies, 'set'>,
	written: { readonly groupId: string; readonly code: string },
	now: number,
	isSecure: boolean
): void {
	const content = { ...written, until: now + CODE_SHOWN_WITHIN_MS };
	cookies.set(CODE_COOKIE, vault.seal(CODE_PLACE, content), {
		path: '/tablet',
		maxAge: CODE_SHOWN_WITHIN_MS / 1000,
		httpOnly: true,
		sameSite: 'lax',
		secure: isSecure
	});
}

/** The code that was handed on for this group, once: a page that is asked for again has none. */
export function taken(
	{ vault }: Pick<House, 'vault'>,
	cookies: Pick<Cookies, 'get' | 'delete'>,
	groupId: string,
	now: number
): string | null {
	const sealed = cookies.get(CODE_COOKIE);
	if (!sealed) return null;
	cookies.delete(CODE_COOKIE, { path: '/tablet' });
	try {
		const found = vault.unseal(CODE_PLACE, sealed, codeShape);
		return found.groupId === groupId && found.until > now ? found.code : null;
	} catch (error) {
		if (error instanceof Unreadable || error instanceof VaultClosed) return null;
		throw error;
	}
}

/** Tells the browser to drop what pages left behind. Cookies go one by one: the tablet's own stays. */
export const CLEAR_SITE_DATA = '"cache", "storage"';
