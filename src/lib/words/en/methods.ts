import { intensityNames } from './intensities.ts';

export const methods = {
	title: 'Where the numbers come from',
	lead: 'Each number in Breathmark has a published source or says that it has none.',
	orderTitle: 'What comes first',
	order:
		'Talk first, then how it feels, then the pulse, then the speed. When they disagree, the one that says “easier” wins.',
	maximumTitle: 'Maximum pulse',
	maximum: (beginsAt: number, perYear: string, spread: string) => [
		`${beginsAt} minus ${perYear} times age (Tanaka 2001), with a spread of ${spread} beats, the error found in adults who were not active (Sarzynski 2013).`,
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
	classes: intensityNames,
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
	speedLead: 'Oxygen cost goes by gait, not by speed.',
	speedOf: {
		walk: (level: string, climb: string, rest: string) =>
			`Walking: ${level} × speed + ${climb} × speed × incline + ${rest}.`,
		run: (level: string, climb: string, rest: string) =>
			`Running: ${level} × speed + ${climb} × speed × incline + ${rest}.`
	},
	speedError: (uptake: string, low: string, high: string) =>
		`Both in mL/kg/min, with speed in m/min (ACSM). The equation is off by about ${uptake}, a speed worked out from it by ${low} to ${high}. We name a speed only when your fitness was measured.`,
	ceilingTitle: 'Your talking pulse',
	ceiling: (people: number, share: string, spread: string, weeks: number) =>
		`It begins where ${people} adults who were not active last talked with ease: about ${share} of the reserve, with a spread of ${spread} (Foster 2009). Each talk answer with a measured pulse, after half a minute of reading aloud, moves it, and an answer of ${weeks} weeks ago counts half. The sums are our own. They were checked on invented runners, not on people. It raises no band.`,
	accuracyTitle: 'How far off a number can be',
	accuracyLead:
		'For one person. Two people in three lie within the number that is shown, and one in three outside. Where it says “no one number”, the words beside it tell what is known.',
	accuracyCaption: 'Error of each number for one person',
	accuracyColumns: { what: 'Number', error: 'Off by, and how that is known' },
	accuracyUnknown: 'no one number',
	accuracyPeople: 'Measured on:',
	accuracySource: 'The error is from:',
	accuracyOwn: 'our own working out, or memory',
	unknownTitle: 'What the app does not know',
	unknown: (beats: number, talkers: number) => [
		`Your true maximum. One in three people who are not active is more than ${beats} beats away from the estimate.`,
		'How you feel today. Heat, poor sleep, coffee, illness and stress raise the pulse at the same effort.',
		'Medicines that you did not tell it about. Some change the pulse: then we show none.',
		'Whether your answers are right, and whether something is wrong that you cannot feel. No form can find an illness.',
		`Whether you are like the people who were measured. Most were healthy, many were young, and many were men. The talk test was tried with ${talkers} adults who were not active.`,
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
