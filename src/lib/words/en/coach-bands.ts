import type { PhaseKind } from '$lib/outing/phase.ts';
import { fromTo } from './from-to.ts';

/** Bands at the coach's desk. A coach sees no reasons, no answers, no age and no resting pulse. */
export const coachBands = {
	titleOf: (name: string) => `${name}: bands`,
	backToRunner: (name: string) => `Back to ${name}`,
	lead: 'Move a part up or down, or make it narrower. The gap in each picture is the band, from resting pulse on the left to maximum on the right; the dotted line is as far as it may go. The reserve is the way between the two, in per cent. The runner sees the new band at once, with your name and your note.',
	statement:
		'The result is the runner’s own statement. You have not been told that they are healthy. Local rules and your insurance decide what you may do.',
	talkFirst: 'How they can talk comes first, then how it feels, then the pulse.',
	byTalk:
		'This runner goes by talk. There are no pulse numbers for them, so you set how it should feel.',
	pulseNotYet:
		'The resting pulse is not measured yet, so there are no beats. You can set shares of the reserve now; the beats follow.',
	settling: (date: string) =>
		`Settling in: walking only, until ${date} at the earliest. A run comes with bands of its own then.`,
	shortRuns: (longest: string) =>
		`This runner settled in not long ago. Runs last ${longest} at most for now and grow by half each week; the rest of a longer run is walked.`,
	walkOnly: 'This runner may walk. Each run of the outing is a brisk walk for them.',
	closed: {
		title: 'No bands now',
		text: 'There are no numbers to show or set. The runner’s own result page tells them what comes next.'
	},
	notShared: {
		'not-joined': 'Nobody has joined under this name yet, so there are no bands.',
		'not-shared': 'This runner does not share a result with you, so there are no bands.'
	} as Record<string, string>,

	now: 'Band now',
	usual: 'the usual band',
	bpm: 'bpm',
	bpmLong: 'beats a minute',
	range: fromTo,
	under: (high: number) => `under ${high}`,
	giveOrTake: (spread: number) => `give or take ${spread}`,
	percentRange: (low: number | null, high: number) =>
		low === null ? `under ${high} % of reserve` : `${low}–${high} % of reserve`,
	careLimit: 'The upper edge is a limit from their care team. It stays, whatever is set here.',
	effortOf: (low: number, high: number) => `feels ${fromTo(low, high)} of 10`,
	speed: 'Speed',
	swellText: (part: string, low: number | null, high: number, spread: number) =>
		low === null
			? `${part}: under ${high} beats a minute, give or take ${spread}`
			: `${part}: ${low} to ${high} beats a minute, give or take ${spread}`,
	set: {
		default: 'Usual band',
		coach: (date: string) => `Set for this runner on ${date}`,
		group: (date: string) => `Group band, set on ${date}`
	},
	setShort: {
		default: 'usual',
		coach: (date: string) => `own, ${date}`,
		group: (date: string) => `group, ${date}`
	},
	isCut: 'It was set higher. Their result ends it here now.',
	elsewhere: 'A gentler band counts for this runner. It was set outside this group.',

	form: {
		legend: (part: string) => `Set the ${part.toLowerCase()}`,
		lowPercent: 'From, % reserve',
		lowHint: 'Empty: anything under.',
		highPercent: 'To, % reserve',
		effortLow: 'Feels, from',
		effortHigh: 'Feels, to',
		effortHint: '0 is sitting, 10 is everything.',
		beats: 'Beats a minute',
		about: (range: string) => `about ${range}`,
		rough: 'To the nearest five, until you set it.',
		noBeats: 'no band yet',
		drag: 'drag the edges',
		resting: 'resting',
		maximum: 'maximum',
		notes: 'Notes',
		runnerNote: 'Note to the runner',
		runnerNoteHint: 'They read it beside the band. Nothing about health, please.',
		innerNote: 'Note for the coaches of this group',
		innerNoteHint:
			'Runners do not see it on their pages. It is in the file when they ask for their data.',
		groupNote: 'Note to the runners',
		save: 'Set this band',
		saved: 'Set.',
		back: 'Back to how it was before',
		backTo: (what: string, date: string) => `Back to ${what}, as on ${date}`,
		backToUsual: 'Back to the usual band',
		takeBack: 'Use the usual band again',
		takeBackGroup: 'Use the group band again'
	},
	/** Where a part ends, and why. */
	ends: {
		reserve: {
			screening: (percent: number) => `Ends at ${percent} %: their result allows no more.`,
			phase: (percent: number, part: PhaseKind) =>
				part === 'steady-run'
					? `Ends at ${percent} %: on the average, comfortable talk ends about there.`
					: `Ends at ${percent} %: more would be another part of the outing.`
		},
		effort: {
			screening: (effort: number) => `Ends at ${effort}: their result allows no more.`,
			phase: (effort: number) =>
				effort === 6
					? 'Ends at 6: from 7 on it means ease off.'
					: `Ends at ${effort}: more would be another part of the outing.`
		}
	},
	issues: {
		missing: 'Type a number.',
		'not-a-number': 'Type a number without letters.',
		'not-whole': 'Type a whole number.',
		'too-low': 'That is too low to be a band. Use 20 % or more, and effort 1 or more.',
		'too-high': 'That is more than there is.',
		'under-low': 'This has to be above the number before it.',
		'too-narrow': 'The two have to be at least 5 apart, or nobody can hold it.',
		'too-long': 'Please make it shorter.',
		'unknown-option': 'Pick one of the choices.'
	} as Record<string, string>,

	history: {
		title: 'What was set',
		caption: 'Newest first',
		none: 'Nothing was set yet. The usual bands count.',
		when: 'When',
		part: 'Part',
		band: 'Band',
		who: 'Who',
		notes: 'Notes',
		takenBack: 'usual band again',
		toRunner: (note: string) => `To the runner: ${note}`,
		inner: (note: string) => `Among coaches: ${note}`
	},

	doubts: {
		title: 'What they say about it',
		row: (date: string, feels: string) => `${date}: ${feels}`,
		feels: {
			'too-hard': 'feels too hard',
			'too-easy': 'feels too easy',
			other: 'wants to talk about it'
		} as Record<string, string>,
		markSeen: 'I have seen it',
		seen: (date: string) => `seen on ${date}`
	},

	group: {
		title: 'Bands of the group',
		lead: 'The bands of everybody for one part of the outing, side by side.',
		parts: 'Part of the outing',
		caption: (part: string) => `${part}: everybody in the group, in the order of the alphabet`,
		runner: 'Runner',
		today: 'Today',
		band: 'Pulse band',
		feels: 'Feels, of 10',
		setBy: 'Set',
		instead: (part: string) => `${part.toLowerCase()} instead`,
		notInOuting: 'not in their outing',
		noPulse: 'by talk',
		nobody:
			'Nobody is in this group yet. Once runners have joined, their bands stand here side by side.',
		addRunners: 'Invite runners',
		defaultsTitle: (part: string) => `${part} for the whole group`,
		defaultsLead:
			'Counts for everybody without a band of their own. The gap in the picture is the band; the dotted line is as far as it may go. The reserve is the way from resting pulse to maximum, in per cent. Each runner’s result cuts it where it has to.',
		cards: 'Print all cards',
		says: (feels: string) => feels
	},

	advice: {
		title: 'Advice',
		lead: 'What this runner was told by somebody who may advise them. You see when, and how far. You never see why, or who said it.',
		none: 'No advice is written down. Runners write it down themselves, from their result page.',
		row: (date: string, scope: string) => `${date}: ${scope}.`,
		place: (nth: number, of: number) =>
			`Number ${nth} of ${of} that read alike, the last written first. Ask the runner which one you know.`,
		what: 'You can confirm that this advice was given, if you know it: you saw a letter, or you gave it yourself. It changes nothing about what they may do.',
		named: (name: string, qualification: string) =>
			`The runner will read: confirmed by ${name}, ${qualification}.`,
		namedBare: (name: string) =>
			`The runner will read: confirmed by ${name}, no qualification given.`,
		writeQualification: 'Write down your qualification',
		confirm: 'Confirm this advice',
		takeBack: 'Take it back'
	}
};
