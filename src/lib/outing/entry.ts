import type { Effort, TalkLevel } from '../physiology/effort-scale.ts';
import type { Outing } from './outing.ts';

/** Where it can hurt. Chosen from a list: no free text about health is kept. */
export const painPlaces = [
	'foot',
	'ankle',
	'shin',
	'calf',
	'knee',
	'thigh',
	'hip',
	'back',
	'elsewhere'
] as const;
export type PainPlace = (typeof painPlaces)[number];

export const painLevels = ['none', 'new', 'growing'] as const;
export type PainLevel = (typeof painLevels)[number];

/**
 * What felt wrong, as the headings of the stop signs sort it. 'not-said' is for whoever pressed the
 * button and never told: it counts as a sign. 'none' is for whoever said that it was nothing.
 */
export const wrongSigns = [
	'call-now',
	'doctor-today',
	'ask-first',
	'pain',
	'not-said',
	'none'
] as const;
export type WrongSign = (typeof wrongSigns)[number];

export const pulseSources = ['chest-strap', 'tapped', 'counted'] as const;

/** A pulse that was measured, beats a minute, and how. */
export interface MeasuredPulse {
	readonly bpm: number;
	readonly source: (typeof pulseSources)[number];
}

interface OfOuting {
	/** A uuid made on the device: what makes two entries the same. */
	readonly id: string;
	/** A uuid made on the device when the outing began: one doing of one outing by one runner. */
	readonly outingRunId: string;
	/** Epoch milliseconds, by the device's clock. */
	readonly at: number;
	/** Counts up from 0 in the outing run, on the device that wrote it. */
	readonly seq: number;
	/** On the outing's own clock: milliseconds since its start, pauses included. */
	readonly elapsedMs: number;
}

interface OfPhase {
	/** Place of the phase, from 0, repeats written out. */
	readonly phase: number;
}

interface Pain {
	readonly level: PainLevel;
	/** Null where there is none, or where it was not said. */
	readonly where: PainPlace | null;
}

/** What was said of talk and effort in a phase. */
export interface TalkAnswer extends OfPhase {
	readonly kind: 'talk-answer';
	readonly secondsIntoPhase: number;
	readonly talk: TalkLevel;
	readonly effort: Effort | null;
	readonly speedKmh: number | null;
	/** True after the passage of about half a minute, false after the short line. */
	readonly afterPassage: boolean;
	/** Always null with pulse off. */
	readonly pulse: MeasuredPulse | null;
	/** There where effort was guessed before talk was told; null without a guessed pulse, as with it off. */
	readonly guessedBpm?: number | null | undefined;
}

export type EntryContent =
	| {
			readonly kind: 'started';
			/** As it was done, repeats and all: a plan may change later. */
			readonly outing: Outing;
			/** Of the group's planned outing, where there is one. */
			readonly plannedId: string | null;
			readonly place: 'treadmill' | 'outdoors';
			/** Marked hot: it is not compared with others. */
			readonly hot: boolean;
	  }
	| { readonly kind: 'paused' | 'resumed' | 'halted' | 'cooling-down' }
	| ({ readonly kind: 'skipped' } & OfPhase)
	| ({ readonly kind: 'added-seconds'; readonly seconds: number } & OfPhase)
	| TalkAnswer
	| ({
			readonly kind: 'phase-done';
			readonly activeSeconds: number;
			readonly how: 'whole' | 'skipped' | 'cut-short';
	  } & OfPhase)
	| { readonly kind: 'ended'; readonly how: 'finished' | 'early' }
	| ({ readonly kind: 'pain' } & Pain)
	| ({ readonly kind: 'pain-next-morning' } & Pain)
	| { readonly kind: 'something-wrong'; readonly sign: WrongSign }
	| ({
			readonly kind: 'pulse-summary';
			readonly source: MeasuredPulse['source'];
			readonly meanBpm: number;
			readonly highestBpm: number;
			/** Of the phase, in contact. */
			readonly measuredSeconds: number;
	  } & OfPhase);

/** What a prompter writes down about one outing of one runner. Entries are only ever added. */
export type Entry = OfOuting & EntryContent;

/** Whether a sign is an urgent event that only a doctor's advice lifts. Pain stops runs instead. */
export const isStopSign = (sign: WrongSign): boolean => sign !== 'none' && sign !== 'pain';
