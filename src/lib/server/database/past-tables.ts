import type { LocalDate } from '../../screening/types.ts';

type Milliseconds = number;

/** What runners did, and the pain that they told of. */
export interface PastTables {
	past_outing: {
		runner_id: string;
		/** Of the outing run; made on the device. */
		id: string;
		began_at: Milliseconds;
		on_date: LocalDate;
		removed_at: Milliseconds | null;
		/** Of a group's planned outing, as the phone named it. */
		planned_id: string | null;
	};
	past_entry: {
		runner_id: string;
		/** Made on the device. */
		id: string;
		outing_run_id: string;
		/** JSON of an Entry. */
		sealed: string;
		received_at: Milliseconds;
	};
	/** New or growing pain, the last that was told; it stands until the runner says it is gone. */
	runner_pain: {
		runner_id: string;
		said_at: Milliseconds;
		gone_at: Milliseconds | null;
		sealed: string;
	};
}
