import type { Entry, EntryContent, MeasuredPulse } from '../../outing/entry.ts';
import { phasesOf, type Outing } from '../../outing/outing.ts';
import type { PhaseKind } from '../../outing/phase.ts';
import { passagePhase } from '../../outing/talk-moment.ts';
import { pulseEdges, type PulsePoint } from '../../physiology/pulse-response.ts';
import { about, chance, madeUpId } from './made-up.ts';
import type { Way } from './ways.ts';

/** One doing of one outing by one of the made-up runners. */
export interface Doing {
	readonly outing: Outing;
	readonly plannedId: string;
	readonly place: 'treadmill' | 'outdoors';
	/** Epoch milliseconds. */
	readonly startedAt: number;
	readonly way: Way;
	/** True before the coach told them to go slower. */
	readonly isEarly: boolean;
	readonly heart: { readonly restingBpm: number; readonly maximumBpm: number };
	/** What makes it the same again. */
	readonly seed: string;
}

/** How far into the phase of the passage it is answered, and how long before its end a line. */
const AFTER_PASSAGE_SECONDS = 155;
const BEFORE_END_SECONDS = 6;
/** Slow enough for everybody. */
const RECOVERY_KMH = 4.4;
/** How many of those who are asked answer. */
const ANSWERS = { 'brisk-walk': 0.6, 'steady-run': 0.7, 'recovery-walk': 0.15 } as const;

/** What a phone wrote down of it, from the start to the question about pain. */
export function outingEntries(doing: Doing): Entry[] {
	const { outing, plannedId, place, startedAt, seed } = doing;
	const phases = phasesOf(outing);
	const outingRunId = madeUpId(seed);
	const entries: Entry[] = [];
	const write = (seconds: number, content: EntryContent) => {
		const seq = entries.length;
		const elapsedMs = Math.round(seconds * 1000);
		const of = { id: madeUpId(seed, seq), outingRunId, seq, elapsedMs, at: startedAt + elapsedMs };
		entries.push({ ...of, ...content });
	};
	write(0, { kind: 'started', outing, plannedId, place, hot: false });
	const edges = pulseEdgesOf(doing);
	for (const [phase, { seconds }] of phases.entries()) {
		const [begins, ends] = [edges[phase]!, edges[phase + 1]!];
		for (const answer of answersOf(doing, phase, ends.bpm)) {
			write(begins.seconds + answer.secondsIntoPhase, answer);
		}
		write(ends.seconds, { kind: 'phase-done', phase, activeSeconds: seconds, how: 'whole' });
		if (doing.way.pulse === 'chest-strap') {
			write(ends.seconds, summaryOf(phase, begins, ends, seed));
		}
	}
	const end = edges.at(-1)!.seconds;
	write(end, { kind: 'ended', how: 'finished' });
	write(end + 45, { kind: 'pain', level: 'none', where: null });
	return entries;
}

/** The question about pain on the next morning. */
export function nextMorningEntry(
	last: Entry,
	at: number,
	pain: Pick<Extract<EntryContent, { kind: 'pain' }>, 'level' | 'where'>
): Entry {
	const { outingRunId, elapsedMs } = last;
	const seq = last.seq + 1;
	const id = madeUpId(outingRunId, seq);
	return { id, outingRunId, seq, elapsedMs, at, kind: 'pain-next-morning', ...pain };
}

/** By the app's own model of how a pulse follows effort: an illustration, as everywhere. */
function pulseEdgesOf({ outing, way, heart }: Doing): PulsePoint[] {
	const beats = (share: number) => heart.restingBpm + share * (heart.maximumBpm - heart.restingBpm);
	const steps = phasesOf(outing).map(({ kind, seconds }) => ({
		durationSeconds: seconds,
		steadyBpm: beats(way.shares[kind])
	}));
	return pulseEdges(steps, beats(0.1));
}

type TalkContent = Extract<EntryContent, { kind: 'talk-answer' }>;

function answersOf(doing: Doing, phase: number, bpm: number): TalkContent[] {
	const { outing, way, place, seed } = doing;
	const phases = phasesOf(outing);
	const { kind, seconds } = phases[phase]!;
	if (kind === 'warm-up-walk' || kind === 'cool-down-walk') return [];
	const afterPassage = passagePhase(phases) === phase;
	if (!afterPassage && chance(seed, phase, 'answers') > ANSWERS[kind]) return [];
	return [
		{
			kind: 'talk-answer',
			phase,
			secondsIntoPhase: afterPassage ? AFTER_PASSAGE_SECONDS : seconds - BEFORE_END_SECONDS,
			...feeling(doing, kind, chance(seed, phase, 'harder') > 0.7),
			speedKmh: place === 'treadmill' ? kmhOf(way, kind) : null,
			afterPassage,
			pulse: pulseOf(way.pulse, bpm + about(3, seed, phase, 'pulse'))
		}
	];
}

function feeling(
	{ way, isEarly }: Doing,
	kind: PhaseKind,
	isHarder: boolean
): Pick<TalkContent, 'talk' | 'effort'> {
	if (kind === 'recovery-walk') return { talk: 'comfortable', effort: 4 };
	if (kind !== 'steady-run') return { talk: 'comfortable', effort: way.effort };
	if (isEarly && way.atFirst !== null) return way.atFirst;
	return { talk: 'comfortable', effort: isHarder ? way.effortAtMost : way.effort };
}

function kmhOf({ walkKmh, runKmh }: Way, kind: PhaseKind): number {
	if (kind === 'steady-run') return runKmh;
	return kind === 'recovery-walk' ? RECOVERY_KMH : walkKmh;
}

/** A count over fifteen seconds comes in fours. */
function pulseOf(source: Way['pulse'], bpm: number): MeasuredPulse | null {
	if (source === null) return null;
	return { source, bpm: source === 'counted' ? Math.round(bpm / 4) * 4 : Math.round(bpm) };
}

function summaryOf(
	phase: number,
	begins: PulsePoint,
	ends: PulsePoint,
	seed: string
): EntryContent {
	const off = about(2, seed, phase, 'strap');
	return {
		kind: 'pulse-summary',
		phase,
		source: 'chest-strap',
		meanBpm: Math.round((begins.bpm + 2 * ends.bpm) / 3 + off),
		highestBpm: Math.round(Math.max(begins.bpm, ends.bpm) + Math.abs(off) + 1),
		measuredSeconds: Math.round(ends.seconds - begins.seconds)
	};
}
