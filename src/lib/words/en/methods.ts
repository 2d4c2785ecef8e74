export const methods = {
	title: 'Where the numbers come from',
	lead: 'Each number in Breathmark has a published source or says that it has none.',
	orderTitle: 'What comes first',
	order:
		'Talk first, then how it feels, then the pulse, then the speed. When they disagree, the one that says “easier” wins.',
	maximumTitle: 'Maximum pulse',
	maximum: [
		'208 minus 0.7 times age (Tanaka 2001), with a spread of 11.4 beats, the error found in adults who were not active (Sarzynski 2013).',
		'A maximum from a supervised test replaces it. Never try to find your maximum by yourself.'
	],
	compareCaption:
		'Maximum pulse (bpm) by published formulas. Tanaka is the one in use; the others stand here for comparison',
	compareAge: 'Age',
	reserveTitle: 'Reserve',
	reserve:
		'Reserve is maximum minus resting pulse. A target is resting plus a share of the reserve (Karvonen 1957). Its spread combines both: the closer to the maximum, the more the maximum’s doubt counts.',
	classesTitle: 'Classes of intensity',
	classesCaption: 'One table of cut points (ACSM, Garber 2011), each half open',
	classes: {
		'very-light': 'very light',
		light: 'light',
		moderate: 'moderate',
		vigorous: 'vigorous',
		'near-maximal': 'near-maximal'
	} as Record<string, string>,
	classColumns: {
		name: 'Class',
		reserve: '% of reserve',
		maximum: '% of maximum',
		mets: 'METs',
		rpe: 'RPE 6–20'
	},
	targetsTitle: 'Targets of each part',
	targetsCaption: 'Shares of reserve and effort, before screening narrows them',
	targetColumns: { phase: 'Part', reserve: '% of reserve', effort: 'Effort, of 10' },
	speedTitle: 'Speed',
	speed:
		'Oxygen cost by gait, not by speed: walking 0.1 × speed + 1.8 × speed × incline + 3.5. Running 0.2 × speed + 0.9 × speed × incline + 3.5. Both in mL/kg/min, with speed in m/min (ACSM). The equation is off by about 7 %, a speed worked out from it by 15 to 20 %. We name a speed only when your fitness was measured.',
	unknownTitle: 'What the app does not know',
	unknown: [
		'Your true maximum. One in three people who are not active is more than 11 beats away from the estimate.',
		'Heat, poor sleep, coffee, illness and stress: they raise the pulse at the same effort.',
		'Medicines that change the pulse: then we show none.'
	],
	sourcesTitle: 'Sources',
	seen: {
		seen: 'read in a stored copy',
		secondary: 'read in another work that cites it',
		memory: 'from memory, to be checked',
		computed: 'computed from the equation'
	} as Record<string, string>,
	draft: 'The question set is a draft that no clinician has reviewed yet.'
};
