import type { LocalDate } from '../../screening/types.ts';

type Milliseconds = number;

/** Outings that were written down, programmes of a group, and what is planned for a day. */
export interface OutingTables {
	outing_plan: {
		id: string;
		/** Of a group or of a runner alone: one of the two is null. */
		group_id: string | null;
		runner_id: string | null;
		/** JSON of an Outing. */
		outing: string;
		/** Counts up from 1 with each save. */
		revision: number;
		created_at: Milliseconds;
		changed_at: Milliseconds;
		changed_by: string | null;
		/** Null for a runner's own. */
		changed_by_name: string | null;
		removed_at: Milliseconds | null;
	};
	/** Every state that was ever kept, the newest included. */
	outing_plan_version: {
		plan_id: string;
		revision: number;
		outing: string;
		changed_at: Milliseconds;
		changed_by_name: string | null;
	};
	programme: {
		id: string;
		group_id: string;
		/** Sealed: what it was made from. */
		inputs: string;
		starts_on: LocalDate;
		/** JSON: days of the week, 1 for Monday to 7 for Sunday. */
		weekdays: string;
		/** JSON: dates on which there is no outing. */
		holidays: string;
		revision: number;
		created_at: Milliseconds;
		changed_at: Milliseconds;
		changed_by: string | null;
		changed_by_name: string;
		ended_at: Milliseconds | null;
	};
	planned_outing: {
		id: string;
		group_id: string;
		/** Null for an outing that was planned for a day by itself. */
		programme_id: string | null;
		/** Its place in the programme, from 1; null by itself. */
		number: number | null;
		/** Week of the programme, from 1; null by itself. */
		week: number | null;
		on_date: LocalDate;
		/** JSON of the Outing as it was when it was planned. */
		outing: string;
		state: 'planned' | 'done' | 'missed';
		decided_at: Milliseconds | null;
	};
	/** Days that a coach marked as hot for a group. */
	hot_day: { group_id: string; on_date: LocalDate; marked_at: Milliseconds };
	/** Only where a member stands elsewhere than the group. */
	member_step: {
		programme_id: string;
		member_id: string;
		/** Outings behind the group below zero, ahead of it above. */
		outings_ahead: number;
		set_at: Milliseconds;
		set_by_name: string;
	};
	/** Every change of a step, those back to the group included. */
	member_step_change: {
		id: string;
		programme_id: string;
		member_id: string;
		outings_ahead: number;
		set_at: Milliseconds;
		set_by_name: string;
	};
}
