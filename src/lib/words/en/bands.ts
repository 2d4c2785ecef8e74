import { bandNumbers, speedTexts } from './band-numbers.ts';
import { plural } from './plural.ts';

export const bands = {
	title: 'Your effort bands',
	headRest: (bpm: number) => `resting pulse ${bpm}`,
	headRun: (until: string) => `may run until ${until}`,
	headTalk: (until: string) => `may run, by talk, until ${until}`,
	headSettling: (until: string) => `settling in; your result counts until ${until}`,
	headWalk: (until: string) => `may walk until ${until}`,
	talkFirst: 'How you can talk comes first.',
	bpm: 'bpm',
	bpmLong: 'beats a minute',
	...bandNumbers,
	feels: 'feels, of 10',
	count: 'count 15 s',
	countTo: (high: number) => `to ${high}`,
	rest: (bpm: number) => `rest ${bpm}`,
	maximum: {
		age: (bpm: number) => `maximum, from age, ${bpm}`,
		'supervised-test': (bpm: number) => `maximum, measured, ${bpm}`,
		'age-and-highest-seen': (bpm: number) => `maximum, from age and your highest pulse, ${bpm}`
	},
	byItsEnd: 'by the end of it',
	usual: {
		'warm-up-walk': '6 to 8 minutes',
		'brisk-walk': '10 to 20 minutes',
		'steady-run': 'begin with 20 to 30 seconds',
		'recovery-walk': 'about 2 minutes, longer if talk has not come back',
		'cool-down-walk': '6 minutes or more'
	},
	speed: speedTexts,
	whereFrom: 'Where these numbers come from',
	from: {
		talk: 'The line: the talk test. In the research, people who can just talk comfortably are at a steady, sustainable effort.',
		effort:
			'Feels, of 10: the public-health effort scale, 0 sitting and 10 everything. 5 to 6 is moderate.',
		pulse: (low: string, high: string) =>
			`Pulse: from ${low} to ${high} of your reserve, which is maximum minus resting (Karvonen 1957).`,
		pulseUnder: (high: string) =>
			`Pulse: under ${high} of your reserve, which is maximum minus resting (Karvonen 1957).`,
		maximumAge:
			'Maximum: 208 minus 0.7 times your age (Tanaka 2001). How far it can be off stands below.',
		maximumTested: 'Maximum: from your supervised test, give or take 3.',
		resting: (mornings: number) =>
			plural(mornings, {
				one: 'Resting: one morning. More mornings make it surer.',
				other: `Resting: the mean of ${mornings} mornings.`
			}),
		careCut: 'Upper edge: the limit that your care team set.',
		spread: (low: number | null, high: number) =>
			low === null
				? `The upper edge is unsure by about ${high} beats either way.`
				: `The lower edge is unsure by about ${low} beats either way, the upper by about ${high}.`,
		choice:
			'Running from 50 to 62 % is our own choice: adults who were not active could still talk comfortably there (Foster 2009).',
		speedNatural:
			'Speed: the range in which people naturally walk or run. We do not know your fitness, so we name no speed of your own.',
		speedCapacity:
			'Speed: from your measured fitness by the ACSM walking and running equations, unsure by 15 to 20 %.',
		methods: 'All formulas and their sources'
	},
	careLimitHints: {
		on: 'Stay under it all the time. No band here goes over it.',
		off: 'Stay under it all the time. It is the only pulse number that counts for you.',
		'not-yet':
			'Stay under it all the time. It counts from today, whatever the bands here say, and you need a pulse to know: measure it when you walk.'
	},
	pulseOff:
		'There are no pulse numbers here, because they could be wrong for you. Go by the line and by how it feels.',
	needResting: {
		'not-known': 'Measure your resting pulse, and a pulse band is added to each part.',
		'measure-again':
			'Your resting pulse was outside 40 to 100. Please measure again on another morning. Until then, go by the line.'
	},
	measure: 'Measure my resting pulse',
	walkCheck: 'Walk check',
	past: 'Past outings',
	tryPulse: 'Try a strap, or tap my pulse',
	mileWalk: 'Mile walk',
	fitness: {
		measured: (value: string, spread: string) =>
			`Speeds come from your tested fitness: ${value} mL/kg/min, give or take ${spread}.`,
		'past-outings': (value: string, spread: string) =>
			`Speeds come from your outings: about ${value} mL/kg/min, give or take ${spread}.`,
		'mile-walk': (value: string, spread: string, date: string) =>
			`Speeds come from your mile walk of ${date}: about ${value} mL/kg/min, give or take ${spread}.`,
		'walk-check': (value: string, spread: string, date: string) =>
			`Speeds come from your walk check of ${date}: about ${value} mL/kg/min, give or take ${spread}.`
	},
	aboutYou: 'About you and units',
	settling: {
		title: 'You are settling in',
		text: 'You are new to this, or have a health condition, so you begin with walking. No running yet.',
		left: (walks: number, days: number) =>
			`Still to come: at least ${walks} ${plural(walks, { one: 'walk', other: 'walks' })}, and at least ${days} ${plural(days, { one: 'day', other: 'days' })} from your first walk.`,
		notBegun: 'The two weeks begin with your first walk. Say so here when you have done one.',
		until: (date: string) => `The first short runs can come on ${date} at the earliest.`,
		walked: 'I walked an outing today',
		soFar: (walks: number) =>
			plural(walks, { one: 'One walk so far', other: `${walks} walks so far` }),
		notWalked: 'Take it back',
		notWalkedOf: (date: string) => `Take back the walk of ${date}`,
		why: 'Legs, joints and heart need time before running. Two weeks of walking is our own careful choice; guidelines ask for light to moderate effort first.'
	},
	shortRuns: (longest: string) =>
		`You have settled in. Runs last ${longest} at most for now, with a minute of walking or more between, and grow by half each week. In a group you walk on while others still run.`,
	walkPlan:
		'You plan to walk only, so there is no run here. Brisk walking is a full goal of its own.',
	walkOnly:
		'Your result is walking only, so there are brisk walks here instead of runs. Brisk walking is a full goal of its own.',
	estimates:
		'These are estimates. A maximum worked out from age is ten beats or more off for nearly two people in five, so how you can talk comes first, the pulse second. Hatched edges: your true limit may lie there.',
	estimatesTested:
		'These are estimates. How you can talk comes first, the pulse second. Hatched edges: your true limit may lie there.',
	catchUp:
		'Your pulse catches up after about two minutes. Judge the first two by the line you can say.',
	chartTitle: 'All parts side by side',
	chartText: 'Pulse bands from resting to maximum. The same numbers stand in the table below.',
	chartAxis: 'beats a minute',
	chartNoScript: 'The picture needs script. The table has the same numbers.',
	tableCaption: 'Each part with its pulse band',
	tablePhase: 'Part',
	tablePulse: 'Pulse (bpm)',
	tableSpread: 'Edges unsure by',
	tableReserve: 'Share of reserve',
	ifTitle: 'If your maximum is ten beats off',
	ifText: 'The same part of the outing with another maximum:',
	ifCaption: 'Pulse band if the maximum is off',
	ifMaximum: 'Maximum',
	ifLess: (bpm: number) => `${bpm}, ten less`,
	ifSame: (bpm: number) => `${bpm}, as it is now`,
	ifMore: (bpm: number) => `${bpm}, ten more`,
	units: {
		change: 'Change units',
		'km/h': 'km/h',
		mph: 'mph',
		'min/km': 'min/km',
		'min/mile': 'min/mile'
	},
	start: 'Start an outing',
	yours: 'Your own numbers, step by step',
	stop: 'Signs to stop',
	print: 'Print my bands',
	careTitle: 'Take care of this'
};
