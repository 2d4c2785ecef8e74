import { decimal } from './numbers.ts';
import { helpHere } from './help-here.ts';
import { plural } from './plural.ts';

export const groupList = {
	title: 'Your groups',
	empty:
		'Your groups will stand here. Make the first one: it takes a name, and the emergency number where you run.',
	make: 'Make a group',
	runners: (count: number) =>
		count === 0 ? 'nobody yet' : plural(count, { one: '1 runner', other: `${count} runners` }),
	roles: { owner: 'you own it', helper: 'you help' } as Record<string, string>,
	outingOn: (until: string) => `An outing is on, until ${until} at the latest`,
	statement:
		'A result is the runner’s own statement. Nobody has told you that they are healthy. Local law and your insurance decide what you may do.'
};

export const groupFields = {
	newTitle: 'Make a group',
	newLead: 'You can change all of this later.',
	name: 'Name of the group',
	nameHint: 'Runners see it when they join.',
	usualPlace: 'Usual place',
	usualPlaceHint: 'Such as the canal path, or the room with the treadmills. It may stay empty.',
	timeZone: 'Time zone',
	timeZoneHint: 'The group’s days begin and end by it.',
	timeZoneOpen: 'Pick the place nearest to you',
	units: 'Speed in',
	paceUnits: 'Pace in',
	emergencyNumber: 'Emergency number where you run',
	emergencyNumberHint: (known: string) =>
		`We never guess it. ${known}. Until it is here, no outing starts, none reaches a phone, and nothing is printed.`,
	...helpHere,
	meetingPointHint: 'So that help finds you: an address, or what stands beside it.',
	defibrillatorHint: 'Where it hangs, and when it can be reached.',
	firstAiderHint: 'Who is trained and comes along.',
	create: 'Make this group',
	save: 'Keep these changes',
	saved: 'Kept.',
	issues: {
		missing: 'Fill this in.',
		'too-long': 'Make it shorter.',
		'unknown-option': 'Pick one of the choices.',
		'not-a-number': 'Type the number to call: 2 to 15 digits, no letters.',
		'changed-meanwhile':
			'This was changed on another page meanwhile. What you typed stands here: press again to keep it.'
	} as Record<string, string>
};

export const groupSettings = {
	title: 'About this group',
	readOnly: 'Only its owners change these.',
	notGiven: 'not given',
	coaches: 'Coaches',
	coachesText:
		'A helper sees the runners, adds names, takes attendance, sets bands and leads an outing. An owner also changes the group, its links and its coaches, and takes names off the list.',
	roles: { owner: 'owner', helper: 'helper' } as Record<string, string>,
	you: 'you',
	makeOwner: 'Make owner',
	makeHelper: 'Make helper',
	dismiss: 'Take off the group',
	ofCoach: (what: string, name: string) => `${what}: ${name}`,
	lastOwner: 'A group needs an owner. Make somebody else owner first.',
	inviteCoach: 'Invite another coach',
	inviteCoachText: 'Make a link and send it to them. It works once, for seven days.',
	makeCoachLink: 'Make a link for a coach',
	coachLink: 'The link. It is shown this once.',
	coachLinks: 'Links for coaches',
	linkRow: (made: string, until: string) => `Made on ${made}, works until ${until}`,
	revoke: 'Take back',
	revokeOf: (made: string) => `Take back the link of ${made}`,
	leave: 'Leave this group',
	leaveText: 'You no longer see its runners. The other coaches do.',
	leaveGo: 'Leave',
	export: 'Take the list with you',
	exportText:
		'Names and attendance as a table (CSV), or all that the group wrote down (JSON): the fields above, names, attendance, its outings and its programme. Bands, notes and coaches are not in it. Results are not either: they stay where a runner can take them back.',
	csv: 'Get the table',
	json: 'Get all of the group',
	delete: 'Delete this group',
	deleteText:
		'The list, the attendance, the links and what was set for its runners go for good. Runners keep their own accounts.',
	deleteBox: 'I want to delete this group',
	deleteIssue: 'Tick the box first.',
	deleteGo: 'Delete the group now'
};

export const invite = {
	title: 'Invite runners',
	lead: 'One link for the whole group. Send it, or let them point a phone at the code.',
	empty: 'There is no link yet.',
	askOwner: 'Ask an owner of the group to make one.',
	make: 'Make a link',
	endsOn: 'Last day on which it works',
	endsOnHint: 'At most a year from today.',
	until: (date: string) => `Works until ${date}.`,
	scan: 'Point your phone’s camera here',
	codeOf: (group: string) => `Code that opens the link to join ${group}`,
	orType: 'Or open this address:',
	printHow: 'Print this page from your browser’s menu: it makes one sheet to pin up.',
	revoke: 'Take this link back',
	revokeText: 'Nobody can join by it any more. Whoever joined stays.',
	past: 'Links that no longer work',
	pastRow: {
		ended: (date: string) => `Ended after ${date}`,
		revoked: (date: string) => `Taken back; it would have ended on ${date}`
	} as Record<string, (date: string) => string>,
	sees: 'What runners read before they join',
	seesText:
		'They type their name and agree that you see their result. You never see their answers.',
	tablet: 'Runners without a phone',
	tabletText:
		'Hand this tablet round: one at a time answers the first questions, sees the result and joins. After each, everything of theirs is wiped from it. You are signed out of this browser first.',
	tabletGo: 'Share this tablet',
	issues: {
		missing: 'Pick a day.',
		'not-a-date': 'Pick a day that exists.',
		'in-the-past': 'Pick today or a later day.',
		'too-far': 'Pick a day within a year from today.'
	} as Record<string, string>
};

export const nameImport = {
	title: 'Add names from a list',
	lead: 'From a spreadsheet saved as CSV, or typed one a line. You look at them first; nothing is added before you say so.',
	file: 'File with names',
	fileHint: (most: number) =>
		`The first column counts, or the one called “Name” (or “First name” and “Last name”). No other column is read. At most ${most} names at once.`,
	text: 'Names, one a line',
	textAgain: 'The list as we read it. Mend it here, or in the file.',
	look: 'Look at the names',
	again: 'Look again',
	nothing: 'There was no name in it.',
	tooManyNames: (count: number, most: number) =>
		`This list has ${decimal(count, 0)} names. At most ${most} can be added at once: cut it into smaller ones. Nothing was added.`,
	tooManyRows: (most: number) =>
		`This list has more than ${decimal(most, 0)} lines. Cut it into smaller ones. Nothing was added.`,
	tooLarge: (kilobytes: number, most: number) =>
		`This list is larger than ${kilobytes} KB, the most that fits. Keep only the column with the names, and at most ${most} of them. Nothing was added.`,
	wrongTitle: (count: number) =>
		plural(count, { one: 'One line needs mending', other: `${count} lines need mending` }),
	wrongText: 'Nothing is added until every line is right.',
	line: (line: number) => `Line ${line}`,
	lineIssues: {
		missing: () => 'there is no name.',
		'too-long': () => 'the name is longer than 60 characters.',
		'not-a-name': () => 'this is not a name that we can keep.',
		quotes: () => 'a quotation mark is not closed, or stands inside a name.',
		twice: (same: number | null) =>
			`the same name as on line ${same}. Add something to tell the two apart.`
	} as Record<string, (same: number | null) => string>,
	ready: (count: number) =>
		plural(count, { one: 'One name to add', other: `${count} names to add` }),
	known: (count: number) =>
		plural(count, {
			one: 'One name is in the group already and stays as it is:',
			other: `${count} names are in the group already and stay as they are:`
		}),
	nothingNew: 'Every one of these names is in the group already.',
	encodings: {
		'windows-1252':
			'The file did not say how its letters are written, so we guessed (Windows-1252). Look at names with accents.'
	} as Record<string, string>,
	add: (count: number) =>
		plural(count, { one: 'Add this name', other: `Add these ${count} names` }),
	claim:
		'Runners never see this list. Whoever joins and types one of these names becomes that runner.'
};
