import type { Intensity } from '$lib/physiology/intensity.ts';

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
	classesCaption: 'Each begins at its first number (Garber 2011)',
	classes: {
		'very-light': 'very light',
		light: 'light',
		moderate: 'moderate',
		vigorous: 'vigorous',
		'near-maximal': 'near-maximal'
	} satisfies Record<Intensity, string>,
	classColumns: {
		name: 'Class',
		reserve: '% of reserve',
		maximum: '% of maximum',
		effort: 'Effort, of 10'
	},
	classRange: (from: number | null, below: number | null) =>
		from === null ? `under ${below}` : below === null ? `${from} and up` : `${from} to ${below}`,
	targetsTitle: 'Targets of each part',
	targetsCaption: 'Shares of reserve and effort, before screening narrows them',
	targetColumns: { phase: 'Part', reserve: '% of reserve', effort: 'Effort, of 10' },
	speedTitle: 'Speed',
	speed:
		'Oxygen cost by gait, not by speed: walking 0.1 × speed + 1.8 × speed × incline + 3.5. Running 0.2 × speed + 0.9 × speed × incline + 3.5. Both in mL/kg/min, with speed in m/min (ACSM). The equation is off by about 7 %, a speed worked out from it by 15 to 20 %. We name a speed only when your fitness was measured.',
	ceilingTitle: 'Your talking pulse',
	ceiling:
		'It begins where 14 adults who were not active last talked with ease: about 70 % of the reserve, with a spread of 14 (Foster 2009). Each talk answer with a measured pulse, after half a minute of reading aloud, moves it, and an answer of eight weeks ago counts half. The sums are our own. They were checked on 2,000 invented runners, not on people. It raises no band.',
	unknownTitle: 'What the app does not know',
	unknown: [
		'Your true maximum. One in three people who are not active is more than 11 beats away from the estimate.',
		'How you feel today. Heat, poor sleep, coffee, illness and stress raise the pulse at the same effort.',
		'Medicines that you did not tell it about. Some change the pulse: then we show none.',
		'Whether your answers are right, and whether something is wrong that you cannot feel. No form can find an illness.',
		'Whether you are like the people who were measured. Most were healthy, many were young, and many were men. The talk test was tried with 14 adults who were not active.',
		'How a beginner’s pulse moves when runs and walks take turns. No model of it was ever checked on beginners, so the curve is a picture.',
		'Whether a treadmill shows its true speed, or a strap its true pulse. A hand on the rail makes every speed too high.',
		'Whether running by these bands keeps anybody from getting hurt. Nobody has studied that.'
	],
	moreTitle: 'Look closer',
	sourcesTitle: 'Sources',
	seen: {
		seen: 'read in a stored copy',
		secondary: 'read in another work that cites it',
		memory: 'from memory, to be checked',
		computed: 'computed from the equation'
	} as Record<string, string>,
	back: 'Where the numbers come from',
	draft: 'The question set is a draft that no clinician has reviewed yet.'
};
