import { plural } from './plural.ts';

export const aboutYou = {
	title: 'About you and units',
	lead: 'All of this is optional. It stays on this server, encrypted, and no coach sees it.',
	name: 'Name on your pages',
	nameHint: 'A first name or any word. Leave it empty if you like.',
	sex: 'Sex, for the fitness estimate',
	sexHint: 'The published estimate was made with two groups only.',
	sexes: { woman: 'Woman', man: 'Man', none: 'Leave it open' },
	height: 'Height (cm)',
	weight: 'Weight (kg)',
	activity: 'How active were you in the last month? (0 to 7)',
	activityHint:
		'0: I avoid walking. 1: I walk for pleasure. 2 to 3: some light activity, 10 to 60 minutes a week or more than an hour. 4 to 7: running or like effort, from under half an hour to over 3 hours a week.',
	maximum: 'Maximum pulse from a supervised test (bpm)',
	maximumHint:
		'Only from a test that was watched by a professional. Never try to find your maximum by yourself.',
	capacity: 'Oxygen uptake from a supervised test (mL/kg/min)',
	capacityHint: 'With it we can name speeds. Leave it empty if you have never been tested.',
	speedUnits: 'Speed',
	paceUnits: 'Pace outdoors',
	save: 'Keep this',
	saved: 'Kept.',
	fitness: (value: string, spread: string) =>
		`A rough fitness estimate from these answers is ${value} mL/kg/min, give or take ${spread} (Jackson 1990). It is too unsure to set a speed.`,
	issues: {
		'not-a-number': 'Type a number, or leave it empty.',
		'not-whole': 'Type a whole number, or leave it empty.',
		'too-low': 'That is lower than we can believe. Please look at it again.',
		'too-high': 'That is higher than we can believe. Please look at it again.',
		'too-long': 'Use at most 40 characters.',
		'unknown-option': 'Pick one of the choices.',
		'under-resting': 'A maximum has to be well above your resting pulse. Please look at both.'
	} as Record<string, string>
};

export const restingPulse = {
	title: 'Your resting pulse',
	lead: 'Measure it in the morning, before you get up or after five quiet minutes in a chair. No coffee or smoke before it.',
	stepsTitle: 'How to feel it',
	steps: [
		'Lay two fingers, not the thumb, on the inside of your wrist, below the thumb. Press lightly until you feel the beat.',
		'Begin on a beat and call it “zero”. Then count one, two, three.',
		'Count for the whole time, then type the number of beats.'
	],
	howLong: 'How long will you count?',
	lengths: {
		60: '60 seconds: exact to about 1 beat a minute',
		30: '30 seconds: exact to about 2 beats a minute',
		15: '15 seconds: exact to about 4 beats a minute'
	} as Record<number, string>,
	noScript: 'Use any clock with seconds.',
	beats: 'Beats that you counted',
	beatsHint: 'If you know your pulse from a device, pick 60 seconds and type it.',
	on: 'On which day?',
	add: 'Add this morning',
	mornings: 'Your mornings',
	none: 'None yet. One is enough to begin; three or more make it surer.',
	row: (bpm: number, seconds: number) => `${bpm} bpm, counted for ${seconds} s`,
	remove: 'Remove',
	removeOf: (date: string) => `Remove the morning of ${date}`,
	mean: (bpm: number, spread: string, mornings: number) =>
		plural(mornings, {
			one: `Resting pulse ${bpm}, give or take ${spread}.`,
			other: `Resting pulse ${bpm}, the mean of ${mornings} mornings, give or take ${spread}.`
		}),
	again:
		'One morning lies outside 40 to 100. Measure again on another morning. If it happens twice, we ask you to see a doctor or nurse before we use your pulse.',
	askFirst:
		'Two mornings lay outside 40 to 100. That can be quite normal, but a doctor or nurse should look at it first. Until then we show no pulse numbers. Go by how you can talk.',
	off: 'Your result turns pulse numbers off, so there is nothing to measure. Go by how you can talk.',
	back: 'To my bands',
	issues: {
		missing: 'Type the number of beats that you counted.',
		'not-a-number': 'Type a number, such as 68.',
		'not-whole': 'Type a whole number of beats.',
		'too-low':
			'That gives under 30 beats a minute. Please count again. If it stays there, ask a doctor or nurse first.',
		'too-high':
			'That gives over 110 beats a minute. Rest for five minutes and count again. If it stays there, ask a doctor or nurse before you walk or run.',
		'not-a-date': 'Pick a day, such as 2026-11-25.',
		'in-the-future': 'That day has not come yet.',
		'too-long-ago': 'Use a morning of the last three months.',
		'unknown-option': 'Pick 60, 30 or 15 seconds.'
	} as Record<string, string>
};
