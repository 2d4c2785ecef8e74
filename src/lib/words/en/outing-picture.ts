import { intensityLine } from './intensities.ts';
import { spokenLength } from './outings.ts';

const of = (misfits: number, runners: number) => `${misfits} of ${runners}`;

/** The picture of an outing: the pulse that is expected through it. */
export const outingPicture = {
	title: 'What the group’s pulse will do',
	titleOf: (name: string) => `What to expect for ${name}`,
	illustration:
		'An illustration: nobody’s pulse is known beforehand. The line that they can say decides.',
	walkers: 'Whoever may only walk does each run as a brisk walk, just as long.',
	text: (level: number, at: string) =>
		`Expected pulse through the outing, highest ${level} % of reserve at ${at}. The table has the same.`,
	time: 'Minutes. An illustration.',
	level: '% of reserve',
	nobody:
		'The expected pulse stands here once somebody in the group shares a result, goes by pulse and has measured a resting pulse.',
	notDrawn: 'There is nothing to draw for this runner. They go by talk, or have not measured yet.',
	choose: 'Show',
	everybody: 'The whole group',
	go: 'Draw it',
	changes: 'What to change',
	fitsAll: 'Every run and walk fits everybody who can be drawn.',
	tooMuch: (count: number, runners: number) =>
		`For ${of(count, runners)} a part asks for more than can be reckoned with, so there is no estimate. Begin with runs of 20 to 30 s, and slower.`,
	tooMuchForThisRunner:
		'A part asks for more than can be reckoned with for this runner, so there is no estimate. Begin with runs of 20 to 30 s, and slower.',
	change: {
		'run-too-long': (n: number, misfits: number, runners: number, fits: number | null) =>
			fits === null
				? `Phase ${n}: for ${of(misfits, runners)} their pulse is still up when this run begins. Walk longer before it.`
				: `Phase ${n}: for ${of(misfits, runners)} this run is longer than their band allows; ${spokenLength(fits)} fits all.`,
		'recovery-too-short': (n: number, misfits: number, runners: number, fits: number | null) =>
			fits === null
				? `Phase ${n}: for ${of(misfits, runners)} this walk is too fast to recover in. Walk slower.`
				: `Phase ${n}: for ${of(misfits, runners)} this walk is too short to come back down; ${spokenLength(fits)} fits all.`,
		'walk-too-fast': (n: number, misfits: number, runners: number, _: number | null) =>
			`Phase ${n}: for ${of(misfits, runners)} this walk is faster than their band allows.`
	},
	/** Of one runner, to their coach. */
	said: {
		peak: (percent: number, spread: number, at: string) =>
			`Highest: about ${percent} % of reserve at ${at}, give or take ${spread}.`,
		mean: (percent: number, spread: number) =>
			`On the average: about ${percent} % of reserve, give or take ${spread}.`,
		intensity: intensityLine,
		longest: {
			seconds: (seconds: number) =>
				`Longest run that is expected to stay inside their band: ${spokenLength(seconds)}.`,
			'no-limit': 'Their runs are expected to stay inside their band, however long they are.',
			none: 'Longest run inside their band: none. Their pulse is still up when a run begins. Walk longer before it.'
		},
		recovery: {
			seconds: (seconds: number) =>
				`Shortest walk that brings them back down after a run: ${spokenLength(seconds)}.`,
			ready: 'They are back down before every walk between is over.',
			never:
				'Shortest walk that brings them back down: never. One of the walks between is too fast to recover in. Walk slower.'
		},
		overTop:
			'More is expected here than is open to them for now. Make the runs shorter, or walk longer between them.'
	},
	ofGroup: 'In the whole group',
	empty: 'The expected pulse stands here once there is a phase.',
	notNow: 'It could not be drawn just now. Your outing stands as it is; try again.',
	table: 'The same as a table',
	caption: 'Expected at the end of each phase, in % of reserve',
	phase: 'Phase',
	length: 'Length',
	atItsEnd: 'At its end',
	endText: (middle: number, low: number, high: number) => `${middle} (${low}–${high})`
};
