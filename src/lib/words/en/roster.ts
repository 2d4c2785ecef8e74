import type { NextStep, RosterStateWord } from '$lib/guidance/roster-next.ts';
import { helpHere } from './help-here.ts';
import { plural } from './plural.ts';

/** What a coach reads beside a name. */
export const stateWords: Record<RosterStateWord, string> = {
	'may-run': 'may run',
	'may-run-by-talk': 'may run, by talk',
	'may-walk': 'may walk',
	'not-today': 'not today',
	'answer-again': 'answer again',
	'not-finished': 'not finished',
	'not-for-this-app': 'not for this app',
	'not-shared': 'not shared',
	'not-joined': 'not joined yet'
};

export const nextSteps: Record<NextStep, string> = {
	outing: 'come to the next outing',
	'walk-first': 'walk first; runs come later',
	'answer-again-soon': 'answer again before the last day',
	'answer-again': 'answer the first questions again',
	'finish-questions': 'finish the first questions',
	'own-result': 'their own result page says what comes next',
	'another-way': 'find another way with you',
	talk: 'talk with them',
	'send-link': 'join by your link'
};

export const roster = {
	title: 'Runners',
	today: (date: string) => `Today, ${date}`,
	statement:
		'Each word is the runner’s own statement; nobody has checked it. “Not today” is the same for every reason: please do not ask for it. Lower the effort or send somebody home whenever you think it right.',
	empty: {
		title: 'Nobody is here yet',
		text: 'Runners will stand here, each with what they may do today. Begin with a link that they open on their own phones.',
		invite: 'Make a link for runners',
		import: 'Or add names from a list',
		add: 'Or write a name down'
	},
	find: 'Find',
	name: 'Name',
	word: 'May do',
	everybody: 'everybody',
	show: 'Show',
	all: 'Show everybody',
	noneFound: 'Nobody fits.',
	found: (shown: number, of: number) => `${shown} of ${of}`,
	caption: 'Everybody in the group, by name',
	columns: {
		name: 'Runner',
		today: 'Today',
		pulse: 'Pulse',
		last: 'Last outing',
		next: 'Next step',
		here: 'Here today'
	},
	pulse: { on: 'on', off: 'off' },
	settlingIn: (date: string) => `settling in: walks until ${date} at least`,
	settlingInShort: 'settling in: walks',
	afterwards: (word: string) => `then ${word}`,
	shortRuns: (longest: string) => `runs of ${longest} at most for now`,
	endsOn: (date: string) => `until ${date}`,
	endsSoon: (date: string, days: number) =>
		days === 0
			? `ends today`
			: plural(days, {
					one: `ends on ${date}, one day left`,
					other: `ends on ${date}, ${days} days left`
				}),
	nextOuting: (name: string, date: string) => `${name}, on ${date}`,
	nextWalked: (outing: string) => `${outing}, its runs as brisk walks`,
	never: '–',
	here: 'Here',
	mark: (name: string) => `${name} is here`,
	unmark: (name: string) => `${name} is not here after all`,
	hereCount: (count: number) =>
		plural(count, { one: '1 here today', other: `${count} here today` }),
	otherDays: 'Other days',
	contact: 'Contact',
	contactOf: (name: string) => `Emergency contact of ${name}`,
	invite: 'Invite runners',
	import: 'Add names from a list',
	addTitle: 'Write a name down',
	addText: 'For somebody without a phone, or who has yet to join.',
	add: 'Add',
	issues: {
		missing: 'Type a name.',
		'too-long': 'Use at most 60 characters.',
		'not-a-name': 'Type the name with letters.',
		known: 'This name is on the list already. Add something to tell the two apart.'
	} as Record<string, string>
};

/** Two rows of one name. */
export const namesakes = {
	title: (name: string) => `More than one row is called ${name}`,
	text: 'If this is one person who began again on the tablet, the older row no longer says what they may do. Until you know, go by the stricter one. The oldest stands first.',
	putAway:
		'Open the older one to take it off the list. If they are two people, give one another name.',
	askOwner: 'An owner of the group can take the older one off the list.',
	joined: (place: number, date: string) => `Row ${place}: joined on ${date}`,
	alone: (place: number) => `Row ${place}: a name alone`
};

export const outing = {
	title: 'Today’s outing',
	isSet: 'Set for today:',
	noneSet: 'No outing is set for today.',
	setOne: 'Set one',
	off: 'While an outing is on, you can see whom to call for each runner.',
	start: 'Start today’s outing',
	noNumber:
		'No outing starts, and none reaches a runner’s phone, before the group has an emergency number.',
	setNumber: 'Write down the emergency number',
	askOwner: 'Ask an owner of the group to write it down.',
	on: (until: string) => `The outing is on. It ends by itself at ${until}.`,
	end: 'End the outing',
	hot: 'It is hot today',
	isHot:
		'Today is marked as hot. Phones of the group take it as given, show the caution, and do not compare the outing.',
	notHot: 'Not hot after all',
	weather: 'Heat and other weather',
	call: (number: string) => `Emergency: call ${number}`,
	...helpHere,
	signs: 'Signs to stop'
};

export const contactPage = {
	title: 'Whom to call',
	heading: (name: string) => `Whom to call for ${name}`,
	none: (name: string) => `${name} gave nobody to call.`,
	unreadable: (name: string) =>
		`What ${name} wrote down cannot be opened any more. Please tell whoever runs this server.`,
	call: (number: string) => `Call ${number}`,
	written: 'That you looked is written down for the runner.',
	emergency: (number: string) => `In an emergency call ${number} first.`
};

export const attendanceDays = {
	title: 'Attendance',
	day: 'Day',
	show: 'Show this day',
	of: (date: string) => `Who was there on ${date}`,
	gone: 'Also there, and no longer in the group',
	nobody: 'Nobody is in the group yet.',
	first: 'Bring somebody in',
	/** Whether it was ended early is the runner’s to tell, so this says the same of every outing. */
	byPhone: 'started the outing, by their phone',
	before: 'Days with attendance',
	dayRow: (date: string, count: number) => `${date}: ${count}`,
	none: 'No day has been kept yet.',
	issues: {
		'in-the-future': 'Pick today or an earlier day.',
		'not-a-date': 'Pick a day that exists.',
		missing: 'Pick a day.'
	} as Record<string, string>
};

export const memberPage = {
	title: 'Runner',
	nameTitle: 'Name',
	nameText: 'A spelling, or something that tells two namesakes apart.',
	nameField: 'Name on the list',
	save: 'Keep this name',
	saved: 'Kept.',
	today: 'Today',
	pulseOn: 'Pulse numbers are on.',
	pulseOff: 'Pulse numbers are off: go by talk.',
	next: 'Next',
	nameAlone: 'Nobody has joined under this name yet.',
	added: (date: string) => `On the list since ${date}.`,
	joined: (date: string) => `Joined on ${date}.`,
	attendance: 'Was there on',
	attendanceNone: 'Not on any day yet.',
	bands: 'Bands and advice',
	remove: 'Take off the list',
	removeText:
		'You see nothing of them any more. The days on which they were there stay, under the name. A runner who has no phone of their own is deleted with everything.',
	removeBox: (name: string) => `Take ${name} off the list`,
	removeIssue: 'Tick the box first.',
	removeGo: 'Take off the list now'
};

export const exported = {
	columns: ['Name', 'On the list since', 'Joined', 'Shares', 'Times here', 'Last here'],
	yes: 'yes',
	no: 'no'
};
