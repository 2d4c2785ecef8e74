import type { LocalDate } from '../../screening/types.ts';

type Milliseconds = number;

/** 0 or 1. */
type Flag = number;

/** Coaches, their groups, who is in them, and what a coach sets or sees. */
export interface GroupTables {
	coach: {
		coach_id: string;
		name: string;
		/** As the coach writes it; a runner sees it where it is used. */
		qualification: string | null;
		is_host: Flag;
		created_at: Milliseconds;
	};
	house_setting: { name: string; value: string };
	/** Lets somebody become a coach, perhaps of a group. */
	coach_invitation: {
		id: string;
		token_hash: string;
		group_id: string | null;
		invited_by: string | null;
		created_at: Milliseconds;
		expires_at: Milliseconds;
		used_at: Milliseconds | null;
		revoked_at: Milliseconds | null;
	};
	running_group: {
		id: string;
		name: string;
		usual_place: string | null;
		time_zone: string;
		units: string;
		pace_units: string;
		emergency_number: string | null;
		meeting_point: string | null;
		defibrillator: string | null;
		first_aider: string | null;
		is_demo: Flag;
		created_at: Milliseconds;
	};
	group_coach: {
		group_id: string;
		coach_id: string;
		role: 'owner' | 'helper';
		added_at: Milliseconds;
	};
	/** Lets runners join. The token stays readable, so that its QR code can be shown again. */
	group_invitation: {
		id: string;
		group_id: string;
		token: string;
		created_by: string | null;
		created_at: Milliseconds;
		/** The last day on which it works. */
		ends_on: LocalDate;
		revoked_at: Milliseconds | null;
	};
	/** While one is on, coaches see emergency contacts. */
	group_outing: {
		id: string;
		group_id: string;
		started_by: string | null;
		on_date: LocalDate;
		started_at: Milliseconds;
		ended_at: Milliseconds | null;
	};
	member: {
		id: string;
		group_id: string;
		/** Null for a name alone, and after the runner deleted their account. */
		runner_id: string | null;
		name: string;
		added_at: Milliseconds;
		joined_at: Milliseconds | null;
		/** Since when the runner agrees that coaches of this group see the result; null when not. */
		shared_since: Milliseconds | null;
		left_at: Milliseconds | null;
	};
	/** A code with which a member without a phone answers again on a tablet of the group. */
	tablet_return: { member_id: string; code_hash: string; ends_at: Milliseconds };
	/** Sessions that such a code opened: they answer again, and nothing else. */
	tablet_session: {
		session_id: string;
		group_id: string;
		opened_at: Milliseconds;
		ends_at: Milliseconds;
	};
	/** The bare list: it stays when a runner leaves. */
	attendance: {
		id: string;
		group_id: string;
		member_id: string | null;
		name: string;
		on_date: LocalDate;
		marked_at: Milliseconds;
		marked_by: string | null;
	};
	emergency_contact: { runner_id: string; sealed: string; updated_at: Milliseconds };
	band_setting: {
		id: string;
		group_id: string;
		/** Null for the group's default. */
		member_id: string | null;
		phase: string;
		/** JSON of the shares and efforts; null takes the setting back. */
		setting: string | null;
		runner_note: string | null;
		inner_note: string | null;
		set_by: string | null;
		set_by_name: string;
		set_at: Milliseconds;
	};
	/** "This feels wrong", said by the runner about a phase. */
	band_doubt: {
		id: string;
		member_id: string;
		phase: string;
		feels: 'too-easy' | 'too-hard' | 'other';
		said_at: Milliseconds;
		seen_at: Milliseconds | null;
	};
	advice_confirmation: {
		advice_id: string;
		member_id: string;
		coach_id: string | null;
		coach_name: string;
		qualification: string | null;
		confirmed_at: Milliseconds;
	};
	result_reading: {
		id: string;
		runner_id: string;
		coach_id: string | null;
		coach_name: string;
		group_name: string;
		what: string;
		at: Milliseconds;
		times: number;
		last_at: Milliseconds;
	};
}
