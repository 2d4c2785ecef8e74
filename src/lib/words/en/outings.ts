import type { OutingIssueCode } from '$lib/outing/outing-issues.ts';
import type { PhaseKind } from '$lib/outing/phase.ts';
import { phases } from './phases.ts';
import { decimal } from './numbers.ts';
import { plural } from './plural.ts';

/** Whole minutes and seconds, as they are said: "50 s", "6 min", "1 min 20 s". */
export const spokenLength = (seconds: number) => {
	const minutes = Math.floor(seconds / 60);
	const rest = Math.round(seconds % 60);
	if (minutes === 0) return `${rest} s`;
	return rest === 0 ? `${minutes} min` : `${minutes} min ${rest} s`;
};

/** The library of a group or of a runner. */
export const outingLibrary = {
	title: 'Outings',
	lead: 'What the group does together: walks and runs in order. Each runner gets a band of their own in it.',
	empty: 'Your outings will stand here. The first one comes with three short runs; make it yours.',
	make: 'Make an outing',
	newName: (number: number) => `Outing ${number}`,
	copyName: (name: string) => `${name}, copy`,
	full: 'There are 200 outings here. Remove one that you no longer use, then make the next.',
	longest: (text: string) => `longest run ${text}`,
	running: (text: string) => `${text} running`,
	noRuns: 'walking only',
	total: (text: string) => `${text} in all`,
	changed: (date: string, name: string | null) =>
		name === null ? `Changed on ${date}` : `Changed on ${date} by ${name}`,
	copy: 'Copy',
	copyOf: (name: string) => `Copy ${name}`,
	remove: 'Remove',
	removeOf: (name: string) => `Remove ${name}`,
	removed: 'The outing is removed.',
	putBack: 'Put it back',
	isBack: 'It is back.',
	programme: 'Make a programme of many weeks',
	pictureOf: (runs: readonly string[]) =>
		runs.length === 0 ? 'A walk without runs' : `Runs of ${runs.join(', ')}, with walks between`,
	statement:
		'Who may run, and how hard, is each runner’s own result. An outing never changes it: whoever may walk walks briskly while the others run.'
};

/** Builds one outing. */
export const outingEditor = {
	titleOf: (name: string) => name,
	back: 'All outings',
	name: 'Name',
	nameHint: 'A number and the longest run do well, such as Outing 7: 50 s.',
	phases: 'Phases',
	phase: (n: number, kind: PhaseKind) => `Phase ${n}: ${phases[kind].name.toLowerCase()}`,
	repeat: 'Repeat',
	times: 'times',
	timesOf: (n: number) => `How many times, from phase ${n} on`,
	repeatOf: (n: number) => `the repeat from phase ${n} on`,
	kind: 'Kind',
	length: 'How long',
	lengthHint: 'Minutes and seconds, such as 0:50.',
	slider: (n: number) => `Length of phase ${n}`,
	more: 'More',
	targetLow: 'Band from, % of reserve',
	targetHigh: 'to, %',
	targetHint: (low: number, high: number) =>
		`Empty: the usual band. Narrower than ${low} to ${high} % if you like.`,
	targetHintUnder: (high: number) =>
		`Empty: the usual band. Narrower than under ${high} % if you like.`,
	speed: (unit: string) => `Speed, ${unit}`,
	speedHint: 'Empty: each runner’s own.',
	incline: 'Incline, %',
	cue: 'Words as it begins',
	cueHint: 'Shown and spoken. Nothing about anybody’s health.',
	up: 'Up',
	down: 'Down',
	copy: 'Copy',
	remove: 'Remove',
	wrap: 'Repeat',
	unwrap: 'Once only',
	writeOut: 'Write out',
	writeOutHint: 'Write out makes phases of it that you can change one by one.',
	pressOf: (what: string, phase: string) => `${what}: ${phase}`,
	drag: 'Drag to another place',
	add: 'Add',
	addTitle: 'Add a phase',
	undo: 'Undo',
	redo: 'Redo',
	save: 'Keep',
	saved: 'Kept.',
	unsaved: 'Not kept yet.',
	moved: (phase: string, n: number) => `${phase} is now phase ${n}.`,
	gone: (phase: string) => `${phase} is removed.`,
	total: 'In all',
	running: 'Running',
	longest: 'Longest run',
	phaseCount: 'Phases',
	none: 'none',
	meanwhile: {
		title: 'Somebody else changed this outing',
		text: (name: string, when: string) =>
			`${name} kept another version on ${when}, while you were at it. Nothing of either is lost: yours stands in the form, theirs here. Choose one.`,
		textOwn: (when: string) =>
			`Another version was kept on ${when}, from another phone or window. Nothing of either is lost: yours stands in the form, the other here. Choose one.`,
		theirs: 'Their version',
		mine: 'Your version, in the form',
		differs: 'differs',
		keepMine: 'Keep mine over theirs',
		takeTheirs: 'Take theirs',
		keepBoth: 'Keep mine as another outing'
	},
	versions: {
		title: 'Earlier versions',
		text: 'The last fifty are kept. Bringing one back makes it the newest.',
		row: (when: string, name: string | null) => (name === null ? when : `${when}, ${name}`),
		now: 'as it is now',
		back: 'Bring it back',
		backOf: (when: string) => `Bring back the version of ${when}`
	},
	plan: {
		title: 'Set it for a day',
		text: 'Your runners see it as their next outing, each cut to what they may do.',
		date: 'Day',
		go: 'Set it',
		done: (date: string) => `It is set for ${date}.`,
		issues: {
			missing: 'Pick a day.',
			'not-a-date': 'Pick a day that exists.',
			'in-the-past': 'Pick today or a later day.',
			'too-far': 'Pick a day within a year from today.',
			'date-taken': 'The group has an outing on that day already. Pick another day.'
		} as Record<string, string>
	},
	repeatLine: (times: number) => `Repeat ${times} times`,
	bandLine: (low: number, high: number) => `${Math.round(low)}–${Math.round(high)} % of reserve`,
	speedLine: (speedKmh: number) => `${decimal(speedKmh, 1)} km/h`,
	inclineLine: (percent: number) => `incline ${percent} %`,
	cueLine: (cue: string) => `“${cue}”`,
	fieldOf: (phase: string, text: string) => `${phase}. ${text}`,
	issues: {
		'name-empty': 'Give it a name.',
		'name-too-long': 'Make the name shorter: at most 80 characters.',
		'name-unprintable': 'The name holds a character that cannot be shown. Type it anew.',
		'outing-empty': 'Add a phase: there is none yet.',
		'outing-too-short': 'The whole outing is under a minute. Make a phase longer.',
		'outing-too-long': 'The whole outing is over 4 hours. Make it shorter.',
		'too-many-phases':
			'There are more than 120 phases, repeats written out. Remove some, or make two outings of it.',
		'repeat-empty': 'This repeat has no phase. Remove it, or move one into it.',
		'times-out-of-limits': 'Repeat it 2 to 40 times.',
		'duration-not-whole': 'Write minutes and seconds, such as 0:50 or 6:00.',
		'duration-too-short': 'A phase lasts 5 seconds at least, or nobody can say what comes next.',
		'duration-too-long': 'A phase lasts 2 hours at most.',
		'target-not-a-range': 'Write both ends in per cent, the lower one first, or leave both empty.',
		'target-outside-kind':
			'The band goes beyond what this kind of phase is for. Make it narrower, or pick another kind.',
		'speed-out-of-limits': 'Write a speed of 1 to 20 km/h, or leave it empty.',
		'too-fast-to-walk': 'Nobody walks that fast. Make it slower, or make it a run.',
		'too-slow-to-run': 'That is slower than running begins. Make it faster, or make it a walk.',
		'incline-out-of-limits': 'Write an incline of 0 to 15 %, or leave it empty.',
		'cue-too-long': 'Make the words shorter: at most 120 characters.',
		'run-not-open': 'Your result opens walking for now. Make this a brisk walk.',
		'run-too-long-yet':
			'This run is longer than yours may be for now. Make it shorter, or walk a minute before it.',
		'cue-unprintable': 'The words hold a character that cannot be shown. Type them anew.'
	} satisfies Record<OutingIssueCode, string> as Record<string, string>
};

/** A runner's own page of outings. */
export const ownOutings = {
	title: 'My outings',
	back: 'My outings',
	coming: 'With your group',
	nothingComing:
		'The next outings of your group will stand here, once your coach has set one for a day. You are in no group? Ask your coach for its link. Without one, take the plain outing on any day.',
	waiting: (group: string) =>
		`${group} has outings planned. They come here once your coach has written down the emergency number there.`,
	plain: 'Take the plain outing',
	own: 'On your own',
	empty:
		'Outings that you make for yourself will stand here. The first one is ready to be changed.',
	later: (count: number) =>
		plural(count, { one: '1 more after these', other: `${count} more after these` }),
	hot: 'Your coach has marked this day as hot. Go by the line, and drink when you are thirsty.',
	walksInstead: 'For you, each run is a brisk walk of the same length.',
	shortened: (longest: string) =>
		`For you, runs last ${longest} at most for now. Walk the rest of a longer one.`,
	/** What moved in the calendar of a group. Days move; nobody did anything wrong. */
	moved: {
		title: 'What moved',
		missed: (date: string) => `The outing of ${date} did not take place.`,
		again: (week: number, date: string) =>
			`Week ${week} comes once more, from ${date}. So no step is too big.`,
		free: (from: string, until: string | null) =>
			until === null ? `No outing on ${from}.` : `No outing from ${from} to ${until}.`,
		text: 'The days above are the newest. Nothing has to be made up for.'
	},
	ownWalks: 'They stand here as you may do them now: each run is a brisk walk.',
	ownShortened: (longest: string) =>
		`They stand here as you may do them now: runs last ${longest} at most, and the rest is walked.`,
	shortRuns: (longest: string) =>
		`You began to run not long ago, so your runs last ${longest} at most for now. They grow by half each week. Two short runs need a minute of walking between them.`,
	picture: 'A line for walking, an arc over each run',
	stop: 'Stop if something feels wrong. How you can talk comes first, whatever is written here.'
};
