import type { DemoRunnerId } from './people.ts';

/** The texts that stand in the made-up group's rows: a person reads them, so the words hold them. */
export interface DemoWords {
	readonly group: {
		readonly name: string;
		readonly usualPlace: string;
		readonly meetingPoint: string;
		readonly defibrillator: string;
		readonly firstAider: string;
	};
	readonly coach: { readonly name: string; readonly qualification: string };
	readonly runners: Readonly<Record<DemoRunnerId, string>>;
	/** Whom to call for a runner. */
	readonly contacts: readonly {
		readonly of: DemoRunnerId;
		readonly name: string;
		readonly relation: string;
	}[];
	/** How an outing of the programme is called; a longest run of 0 is a walk. */
	readonly outingName: (number: number, longestRunSeconds: number) => string;
	/** Two outings that the coach wrote down beside the programme, and what to call out in the long run. */
	readonly library: {
		readonly withRuns: string;
		readonly walking: string;
		readonly longCue: string;
	};
	/** What the coach wrote beside a band of Mei-Lin's. */
	readonly bandNote: { readonly toRunner: string; readonly inner: string };
}
