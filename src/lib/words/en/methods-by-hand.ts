export const byHand = {
	title: 'Work out a band by hand',
	lead: 'Paper and a calculator are enough. Here are the steps, with an invented example.',
	example: (age: number, resting: number) =>
		`Invented example: age ${age}, resting pulse ${resting}, brisk walk.`,
	maximum: (beginsAt: number, perYear: string, age: number) =>
		`Maximum: multiply the age by ${perYear} and take it from ${beginsAt}. Here ${beginsAt} − ${perYear} × ${age}.`,
	steps: (resting: number, low: string, high: string) => [
		`Reserve: take the resting pulse from the maximum. Here the maximum − ${resting}.`,
		`Lower edge: ${low} of the reserve, plus the resting pulse.`,
		`Upper edge: ${high} of the reserve, plus the resting pulse.`,
		'Round only at the end. Half a beat goes up.'
	],
	sources:
		'Maximum: Tanaka 2001. Reserve: Karvonen 1957. Shares of a brisk walk: moderate effort, Garber 2011.',
	formTitle: 'Check your sums',
	formLead: 'Type what you got for the invented example. One beat either way is fine.',
	fields: {
		maximum: 'Maximum',
		reserve: 'Reserve',
		low: 'Lower edge',
		high: 'Upper edge'
	},
	check: 'Check my sums',
	right: 'All four are right. This is just how the app does it.',
	own: 'With your own numbers the steps are the same. An age gives only an estimate: ten beats or more off for nearly two people in five. Answer the first questions before you use a band: for some people a pulse number is wrong.',
	back: 'Where the numbers come from',
	issues: {
		missing: 'Type what you got.',
		'not-a-number': 'Type a number, such as 110 or 109.8.',
		'too-low': 'A number of beats is not below zero.',
		'too-high': 'That is more than a pulse can be. Look at the step again.',
		'not-this': 'We get another number here. Look at this step again.'
	} as Record<string, string>
};
