import type { Selectable } from 'kysely';
import { z } from 'zod';
import { isBandSetting, type BandSetting } from '../guidance/band-setting.ts';
import { phaseKinds, type PhaseKind } from '../outing/phase.ts';
import type { Database } from './database/tables.ts';
import { readJson } from './readable.ts';
import { Unreadable } from './vault.ts';

/** What was set, who did, and what they wrote to go with it. */
export interface BandEntry {
	readonly id: string;
	readonly phase: PhaseKind;
	/** Null where it was taken back. */
	readonly setting: BandSetting | null;
	readonly runnerNote: string | null;
	readonly innerNote: string | null;
	readonly setByName: string;
	/** Epoch milliseconds. */
	readonly setAt: number;
}

export const phaseShape = z.enum(phaseKinds as [PhaseKind, ...PhaseKind[]]);

const settingShape: z.ZodType<BandSetting> = z
	.strictObject({
		lowFraction: z.number().nullable(),
		highFraction: z.number(),
		effortLow: z.int(),
		effortHigh: z.int()
	})
	.refine(isBandSetting);

/**
 * A row that does not fit stops everything that would be worked out from it: a default in its place
 * might be harder than what the coach meant.
 * @throws Unreadable
 */
export function entryOf(row: Selectable<Database['band_setting']>): BandEntry {
	const phase = phaseShape.safeParse(row.phase);
	const setting = settingShape
		.nullable()
		.safeParse(readJson(row.setting ?? 'null', 'band_setting'));
	if (!phase.success || !setting.success) throw new Unreadable('band_setting');
	return {
		id: row.id,
		phase: phase.data,
		setting: setting.data,
		runnerNote: row.runner_note,
		innerNote: row.inner_note,
		setByName: row.set_by_name,
		setAt: row.set_at
	};
}
