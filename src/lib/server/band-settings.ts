import { randomUUID } from 'node:crypto';
import type { Kysely } from 'kysely';
import { isBandSetting, type BandSetting } from '../guidance/band-setting.ts';
import type { PhaseKind } from '../outing/phase.ts';
import * as audit from './audit.ts';
import { entryOf, type BandEntry } from './band-setting-rows.ts';
import type { Coach } from './coaches.ts';
import type { Database } from './database/tables.ts';
import * as groups from './groups.ts';
import * as members from './members.ts';

export type { BandEntry } from './band-setting-rows.ts';

/** Whose bands: those of one member, or, with null, the default of the group. */
export interface Subject {
	readonly groupId: string;
	readonly memberId: string | null;
}

/** A setting as a coach writes it. A null setting takes back what was set before. */
export interface BandWords {
	readonly phase: PhaseKind;
	readonly setting: BandSetting | null;
	readonly runnerNote: string | null;
	/** For the coaches of the group. It is in the runner's data file, as everything about them. */
	readonly innerNote: string | null;
}

type Setter = Pick<Coach, 'coachId' | 'name'>;

/**
 * Adds an entry; nothing is ever written over.
 * @throws RangeError when the numbers make no band
 */
export async function set(
	database: Kysely<Database>,
	coach: Setter,
	subject: Subject,
	words: BandWords,
	now: number
): Promise<'set' | 'not-found'> {
	if (words.setting !== null && !isBandSetting(words.setting)) {
		throw new RangeError('set requires a band');
	}
	return database.transaction().execute(async (step) => {
		const held = await hold(step, coach.coachId, subject);
		if (held === null) return 'not-found';
		await append(step, coach, subject, held, words, now);
		return 'set';
	});
}

/** Puts a phase back to what it was before its newest entry, by adding that state once more. */
export async function back(
	database: Kysely<Database>,
	coach: Setter,
	subject: Subject,
	phase: PhaseKind,
	now: number
): Promise<'set' | 'not-found' | 'nothing-before'> {
	return database.transaction().execute(async (step) => {
		const held = await hold(step, coach.coachId, subject);
		if (held === null) return 'not-found';
		const [newest, before] = await entriesOf(step, subject, phase);
		if (newest === undefined) return 'nothing-before';
		const { setting, runnerNote, innerNote } = before ?? NOTHING;
		const words = { phase, setting, runnerNote, innerNote };
		await append(step, coach, subject, held, words, now);
		return 'set';
	});
}

/** Every entry of a subject, newest first. Null for what is not the coach's, or not shared. */
export async function history(
	database: Kysely<Database>,
	coachId: string,
	subject: Subject
): Promise<BandEntry[] | null> {
	const reached = await reach(database, coachId, subject);
	return reached === null ? null : entriesOf(database, subject);
}

const NOTHING = { setting: null, runnerNote: null, innerNote: null };

interface Reached {
	/** The runner whose bands they are; null for a group's default. */
	readonly runnerId: string | null;
}

/** A group of the coach's, or a member of it who shares. */
async function reach(
	database: Kysely<Database>,
	coachId: string,
	{ groupId, memberId }: Subject
): Promise<Reached | null> {
	if (memberId === null) {
		return (await groups.ofCoach(database, coachId, groupId)) && { runnerId: null };
	}
	const member = await members.find(database, coachId, groupId, memberId);
	if (member === null || member.sharedSince === null || member.runnerId === null) return null;
	return { runnerId: member.runnerId };
}

/** The same, while whoever else sets bands in the group waits. */
async function hold(step: Kysely<Database>, coachId: string, subject: Subject) {
	await groups.hold(step, subject.groupId);
	return reach(step, coachId, subject);
}

async function append(
	step: Kysely<Database>,
	coach: Setter,
	subject: Subject,
	{ runnerId }: Reached,
	{ phase, setting, runnerNote, innerNote }: BandWords,
	now: number
): Promise<void> {
	const id = randomUUID();
	const [last] = await entriesOf(step, subject, phase);
	await step
		.insertInto('band_setting')
		.values({
			id,
			group_id: subject.groupId,
			member_id: subject.memberId,
			phase,
			setting: setting === null ? null : JSON.stringify(setting),
			runner_note: runnerNote,
			inner_note: innerNote,
			set_by: coach.coachId,
			set_by_name: coach.name,
			// Two entries of one phase never have the same time, so one of them is the newest.
			set_at: last === undefined ? now : Math.max(now, last.setAt + 1)
		})
		.execute();
	if (runnerId !== null) {
		await audit.record(step, runnerId, now, 'bands.set', { settingId: id });
	}
}

async function entriesOf(
	database: Kysely<Database>,
	{ groupId, memberId }: Subject,
	phase: PhaseKind | null = null
): Promise<BandEntry[]> {
	let rows = database
		.selectFrom('band_setting')
		.selectAll()
		.where('group_id', '=', groupId)
		.where('member_id', memberId === null ? 'is' : '=', memberId);
	if (phase !== null) rows = rows.where('phase', '=', phase);
	return (await rows.orderBy('set_at', 'desc').orderBy('id').execute()).map(entryOf);
}
