import type { MeasuredPulse } from '$lib/outing/entry.ts';
import type { TalkLevel } from '$lib/physiology/effort-scale.ts';

/** What was done. */
export const past = {
	title: 'Past outings',
	lead: 'What you did, as your phone wrote it down. It is yours to read, and yours to delete.',
	empty: 'Your outings will stand here after you have done the first one.',
	first: {
		open: 'Choose your first outing',
		closed: 'See what comes first',
		nobody: 'Begin with the first questions'
	},
	closed:
		'Your result is closed at the moment. So this page shows what you did and how talk went, and no number to aim at.',
	toResult: 'See my result',
	noName: 'An outing',
	early: 'ended early',
	open: 'no end was written down',
	hot: 'a hot day',
	noRuns: 'walking only',
	place: { treadmill: 'on a treadmill', outdoors: 'outdoors' },
	picture: (runs: readonly string[]) =>
		runs.length === 0 ? 'A walk without runs' : `Runs of ${runs.join(', ')}, with walks between`,
	deleted: 'The outing is deleted.',
	older: 'Older outings',
	newer: 'Newer outings'
};

/** One outing that was done. */
export const pastOuting = {
	title: 'A past outing',
	back: 'All past outings',
	total: 'In all',
	running: 'Running',
	longest: 'Longest run',
	none: 'none',
	phases: 'Part by part',
	noPhases: 'Nothing was written down about its parts.',
	phase: (n: number, name: string) => `${n}. ${name}`,
	unknown: 'Part of the outing',
	how: { whole: 'to its end', skipped: 'skipped', 'cut-short': 'cut short' },
	length: (length: string, how: string) => `${length}, ${how}`,
	talk: {
		comfortable: 'Talk was comfortable',
		'with-breaths': 'Talk was with breaths',
		'broke-off': 'Talk broke off'
	} satisfies Record<TalkLevel, string>,
	afterPassage: 'after reading aloud',
	effort: (effort: number, words: string) => `effort ${effort} of 10, ${words}`,
	speed: (speed: string, unit: string) => `${speed} ${unit}`,
	pulse: (bpm: number) => `pulse ${bpm} bpm`,
	pulseMean: (mean: number, highest: number) => `Pulse: ${mean} bpm on average, ${highest} at most`,
	measured: (length: string) => `measured for ${length}`,
	source: {
		'chest-strap': 'by chest strap, good to a beat or two when it sits well',
		tapped: 'tapped along, good to about five beats',
		counted: 'counted by hand: one beat more in 15 s is 4 bpm'
	} satisfies Record<MeasuredPulse['source'], string>,
	sourceShort: {
		'chest-strap': 'chest strap, ± 2',
		tapped: 'tapped, ± 5',
		counted: 'counted, ± 4'
	} satisfies Record<MeasuredPulse['source'], string>,
	doubt:
		'How close these pulses are to your own is from memory, not from a study. The first two minutes of a part read low: the pulse is still catching up.',
	pain: 'Pain',
	after: (said: string) => `After the outing: ${said}.`,
	nextMorning: (said: string) => `The next morning: ${said}.`,
	notSaid: 'Nothing was said about pain.',
	feltWrong: 'You said that something felt wrong.',
	remove: 'Delete this outing',
	removeText:
		'All that was written down about it goes for good. If it counted as a walk for settling in, that goes too. What you told about pain, and an urgent sign, stay.',
	removeBox: 'I want to delete this outing',
	removeIssue: 'Tick the box first.',
	removeGo: 'Delete it'
};
