import { plural } from './plural.ts';

/** The pages of a group's programme. Dates come in as they are shown. */
export const programmePage = {
	title: 'Programme',
	lead: 'Weeks of outings, from walking to the goal that you choose for the group.',
	empty: {
		title: 'There is no programme yet',
		text: 'Its weeks and days will stand here. It begins where your group is and grows at a steady rate.',
		make: 'Make a programme',
		owners: 'An owner of the group makes it.'
	},
	madeBy: (name: string, when: string) => `Last changed by ${name} on ${when}.`,
	unreadable:
		'What this programme was made from cannot be read. Its days stand as they were and nothing is lost, but no rule moves them. Make a new one to go on.',
	another: 'Make another programme',
	weeksTitle: 'Week by week',
	tableCaption: 'Running, and what the pulse is expected to do, in shares of the reserve',
	lastOuting: 'Its longest outing',
	pictureOf: (week: number) => `The longest outing of week ${week}`,
	week: (number: number) => `Week ${number}`,
	runningLine: (running: string, longest: string) => `${running} running, longest run ${longest}`,
	growthLine: (percent: number) =>
		percent === 0 ? 'as much as the week before' : `${percent} % more than the week before`,
	pulseLine: (mean: string, highest: string) =>
		`expected mean ${mean} %, highest ${highest} % of reserve`,
	noEstimate: (runners: number) =>
		`no estimate: it asks more of ${plural(runners, { one: 'the one runner', other: `all ${runners} runners` })} than can be reckoned with`,
	noCurve:
		'No mean or highest can be drawn yet. It takes runners who may go out and have a resting pulse here.'
};

export const programmeForm = {
	title: 'Make a programme',
	back: 'Programme',
	emptyGroup: 'Nobody is in the group yet. The programme can be made all the same.',
	nobodyRuns:
		'Nobody here may run for now. A programme can be made all the same: whoever may walk walks briskly while others would run.',
	look: 'Show the weeks',
	firstRunHint: 'Minutes and seconds, such as 0:30.',
	goalMinutes: 'Minutes',
	goalKilometres: 'Kilometres',
	goalSpeed: (unit: string) => `At a speed of, ${unit}`,
	goalRun: 'Runs of up to',
	goalFields: 'Fill in what belongs to the goal that you chose. The rest may stay as it is.',
	weekdays: {
		1: 'Monday',
		2: 'Tuesday',
		3: 'Wednesday',
		4: 'Thursday',
		5: 'Friday',
		6: 'Saturday',
		7: 'Sunday'
	} as Record<string, string>,
	holidaysHint:
		'From the first to the last day. For one day the first is enough. More can be added in the calendar.',
	holidayFrom: (n: number) => `First day of break ${n}`,
	holidayUntil: (n: number) => `Last day of break ${n}`,
	nearestWeekdays: (names: string) => `Take ${names}`,
	nearestStart: 'Begin today',
	and: ' and ',
	comma: ', ',
	lengthIssue: 'Write minutes and seconds, such as 0:30.',
	missingIssue: 'Fill this in.',
	preview: {
		title: 'These are the weeks',
		dates: (outings: number, first: string, last: string) =>
			`${outings} outings, from ${first} to ${last}.`,
		keep: 'Keep this programme',
		replaces: 'It takes the place of the programme that you have',
		replacesText: (toCome: number, over: number) =>
			`${plural(toCome, { one: 'One outing that is still to come goes.', other: `${toCome} outings that are still to come go.` })} ${
				over === 0
					? 'None was done or missed yet.'
					: plural(over, {
							one: 'The one that is over stays in the calendar.',
							other: `The ${over} that are over stay in the calendar.`
						})
			} Runners who stand at a step of their own stand with the group again. An outing that you set for a day by itself stays.`,
		replaceBox: 'Put the new programme in its place',
		replaceIssue: 'Tick the box first. Nothing has changed yet.'
	},
	meanwhile:
		'Somebody else made or changed the programme while you were at it. Nothing of theirs is changed, and your wishes stand here. Look at the calendar, then keep yours if you still want to.'
};

/** The calendar of a group. */
export const calendarWords = {
	title: 'Calendar',
	today: 'today',
	alone: 'set for this day by itself',
	states: { done: 'done', missed: 'missed' } as Record<string, string>,
	done: 'Done',
	missed: 'Missed',
	takeBack: 'Take it back',
	takeOff: 'Take off',
	hot: 'Mark as hot',
	notHot: 'Not hot after all',
	isHot: 'marked as hot',
	putBack: 'Put back',
	of: (what: string, name: string, date: string) => `${what}: ${name}, ${date}`,
	putBackOf: (dates: string) => `Put back: ${dates}`,
	range: (from: string, until: string) => `${from} to ${until}`,
	free: (dates: string) => `No outing: ${dates}`,
	open: (count: number) =>
		plural(count, {
			one: 'What became of this outing?',
			other: `What became of these ${count} outings?`
		}),
	openText:
		'Until you say so they count as done, so that nothing moves by itself. A week of which less than half was done comes again.',
	allDone: 'All of them were done',
	nothing: 'Nothing is planned. The programme is at its end, or none was made.',
	nothingSoon: 'Nothing is planned for the next four weeks.',
	later: (count: number) => `Later (${count})`,
	over: (count: number) => `Done and missed (${count})`,
	tooClose: 'There are runs on the day before or after as well. Leave a day of rest between runs.',
	said: {
		done: (name: string, date: string) => `${name}, ${date}: done`,
		missed: (name: string, date: string) => `${name}, ${date}: missed`
	},
	off: (dates: string) => `Taken off: ${dates}`,
	again: (count: number, number: number, date: string) =>
		`${plural(count, { one: 'One outing comes', other: `${count} outings come` })} again, from outing ${number} on ${date}.`,
	moves: (number: number, date: string, insteadOf: string) =>
		`Outing ${number} is on ${date} instead of ${insteadOf}, and what follows moves too.`,
	ends: (date: string, insteadOf: string) =>
		`The last outing is on ${date} instead of ${insteadOf}.`,
	nothingMoves: 'Nothing else moves.',
	takeItBack: 'Take it back',
	putItBack: 'Put it back',
	notices: {
		made: 'The programme is kept.',
		meanwhile:
			'Somebody else changed the calendar meanwhile. It stands here as they left it, and your last press changed nothing. Press again if it still fits.',
		days: 'The days are kept.',
		set: 'The outing is set for its day.',
		full: 'That is more days without an outing than a programme can hold. Nothing changed.'
	} as Record<string, string>,
	setTitle: 'Set another outing for a day',
	setText:
		'Beside the programme: it keeps its day, and the programme goes around it. A day has one outing; take the one of the programme off first.',
	noLibrary: 'Outings of your own can be set for a day, once there is one.',
	toLibrary: 'Make one',
	outing: 'Outing',
	pickOuting: 'Pick an outing.',
	changeDays: 'Change the days',
	changeDaysText: 'What was done or missed stays. What is still to come moves to the new days.',
	keepDays: 'Keep these days',
	daysMeanwhile:
		'Somebody else changed the days while you were at it. The calendar shows theirs, and yours stand here. Keep yours if you still want to.'
};
