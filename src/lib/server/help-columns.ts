import type { HelpHere } from '../outing/kept.ts';
import type { Database } from './database/tables.ts';

/** The columns of a group that say where help is. */
export const HELP_COLUMNS = [
	'emergency_number',
	'meeting_point',
	'defibrillator',
	'first_aider'
] as const;

type Columns = Pick<Database['running_group'], (typeof HELP_COLUMNS)[number]>;

export const helpOf = (row: Columns): HelpHere => ({
	emergencyNumber: row.emergency_number,
	meetingPoint: row.meeting_point,
	defibrillator: row.defibrillator,
	firstAider: row.first_aider
});

export const helpColumnsOf = (help: HelpHere): Columns => ({
	emergency_number: help.emergencyNumber,
	meeting_point: help.meetingPoint,
	defibrillator: help.defibrillator,
	first_aider: help.firstAider
});
