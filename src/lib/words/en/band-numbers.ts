import { fromTo } from './from-to.ts';

/** A band in beats, wherever one is shown. */
export const bandNumbers = {
	range: fromTo,
	under: (high: number) => `under ${high}`,
	swellText: (phase: string, low: number | null, high: number, spread: number) =>
		low === null
			? `${phase}: under ${high} beats a minute, give or take ${spread}`
			: `${phase}: ${low} to ${high} beats a minute, give or take ${spread}`,
	careLimit: (bpm: number) => `Limit from your care team: ${bpm} beats a minute.`
};

/** Speeds, wherever one is shown. */
export const speedTexts = {
	treadmill: 'speed',
	from: (low: string, unit: string) => `from ${low} ${unit}`,
	range: (low: string, high: string, unit: string) => `${low}–${high} ${unit}`,
	slowEnd: 'start at the slow end',
	pace: (slow: string, fast: string, unit: string) => `outdoors ${slow}–${fast} ${unit}`,
	paceFrom: (slow: string, unit: string) => `outdoors, begin at ${slow} ${unit}`,
	paceOne: (slow: string, unit: string) => `outdoors ${slow} ${unit}`,
	paceLabel: 'pace',
	paceBegin: (slow: string, unit: string) => `begin at ${slow} ${unit}`,
	spread: (by: string, unit: string) => `give or take ${by} ${unit}`,
	incline: (percent: string, speed: string, unit: string) =>
		`Walking on the flat would have to be faster than people walk. Try ${speed} ${unit} with an incline of ${percent} %.`,
	noRunThisGentle: 'There is no run this gentle for you yet: short runs with walks between.',
	longest: (time: string, speed: string, unit: string) =>
		`Runs of up to ${time} at ${speed} ${unit} should stay inside your band, with about two minutes of walking between.`,
	tooFast: 'Walking cannot bring you here, not even uphill. Go by the line.',
	noWalkThisGentle: 'There is no walk this gentle: stroll as slowly as you like.',
	withIncline: (speed: string, unit: string, percent: string) =>
		`${speed} ${unit}, incline ${percent} %`,
	upTo: (speed: string, unit: string, time: string) => `${speed} ${unit}, up to ${time}`,
	shortRunsOnly: 'runs of 20 to 30 seconds',
	byTheLine: 'by the line',
	shortRuns: 'Start with runs of 20 to 30 seconds.',
	flat: 'Speeds are for a flat treadmill. At these speeds outdoors is the same: some set 0.5 to 1 % incline by habit, but the research finds no difference this slow.'
};
