import { plural } from './plural.ts';

/** How past outings change over weeks. */
export const progress = {
	title: 'How it changes',
	lead: 'Your own outings, compared with each other and with nobody else’s. Nothing here is a goal.',
	empty: 'After your first outing your weeks will stand here.',
	toOutings: 'Choose an outing',
	sameTitle: 'Your speed at the same effort',
	same: 'Only outings that can be compared count: on a treadmill, without a slope, on a day that was not hot, without pain. Of each one counts what you told two minutes or more into a part, with comfortable talk and effort 5 or 6.',
	kinds: { 'steady-run': 'Runs', 'brisk-walk': 'Brisk walks' },
	tooFew: (outings: number, needed: number) =>
		`${outings} of ${needed} outings so far. Tell the speed with your talk answers, and a line will stand here.`,
	tooShort: (days: number, needed: number) =>
		`These outings lie within ${days} days. From ${needed} days on we say whether anything changes.`,
	way: {
		faster: (change: string, low: string, high: string, unit: string) =>
			`You go faster at the same effort: about ${change} ${unit} more in four weeks. Four times in five the true change lies between ${low} and ${high}.`,
		slower: (change: string, low: string, high: string, unit: string) =>
			`You go slower at the same effort: about ${change} ${unit} less in four weeks. Four times in five the true change lies between ${low} and ${high}. Sleep, illness and worry do that too. Nothing needs to be made up for.`,
		'not-clear': (low: string, high: string, unit: string) =>
			`No change that chance could not make: in four weeks it lies between ${low} and ${high} ${unit}, four times in five.`
	},
	fewDoubt:
		'A straight line through so few outings is a rough guide. Talk and effort are told, not measured.',
	/** Of the picture. */
	picture: (outings: number, from: string, to: string, unit: string) =>
		`${outings} outings, from ${from} to ${to} ${unit}, with a line through them and its doubt. The table below has the same numbers.`,
	end: (date: string, speed: string, unit: string) => `${date}: ${speed} ${unit}`,
	caption: (kind: string) => `${kind} at effort 5 or 6 with comfortable talk`,
	columns: { on: 'Day', speed: 'Speed', line: 'The line there' },
	onLine: (at: string, low: string, high: string) => `${at} (${low} to ${high})`,
	weeksTitle: 'Week by week',
	weeks: (count: number) =>
		plural(count, { one: 'Your week so far', other: `Your last ${count} weeks` }),
	weekColumns: {
		monday: 'Week from',
		outings: 'Outings',
		total: 'In all',
		running: 'Running',
		amount: 'Effort-minutes'
	},
	none: '–',
	amount:
		'Effort-minutes are your mean effort times the minutes, of the outings for which you told an effort. More is not better.',
	grewFast: 'Your running grew by more than 30 % in two weeks.',
	grewWhat: 'An easier week does no harm. New or growing pain means no running until it is gone.',
	more: 'More of your own',
	guesses: 'Are my guesses getting closer?',
	export: 'Take all of it away as a file',
	signed: (amount: string, isLess: boolean) => (isLess ? `−${amount}` : amount)
};
