import type { NoCourse } from '$lib/guidance/expected/course.ts';
import type { NotDrawn } from '$lib/guidance/expected/group-outing.ts';
import type { Intensity } from '$lib/physiology/intensity.ts';

const runnersAre = (runners: number) =>
	runners === 1 ? 'One runner is' : `${runners} runners are`;

/** The expected pulse through an outing. Times come in as they are shown, such as 0:50. */
export const outingExpected = {
	title: 'What the pulse will do',
	illustration:
		'This picture is an illustration. It comes from studies of other people, knows nothing of heat, sleep or nerves, and was never checked on beginners. The line that can be said decides.',
	catchUp: 'A pulse catches up after about two minutes. Judge the first two by the line.',
	spread: 'Two times in three the pulse should stay inside the shaded part.',
	peak: 'Highest',
	mean: 'Mean',
	bpm: (bpm: number, spread: number) => `about ${bpm} bpm, give or take ${spread}`,
	percent: (percent: number) => `about ${percent} % of the reserve`,
	atTime: (time: string) => `after ${time}`,
	byIntensity: 'Time at each intensity',
	intensity: {
		'very-light': 'very light',
		light: 'light',
		moderate: 'moderate',
		vigorous: 'vigorous',
		'near-maximal': 'near the maximum'
	} satisfies Record<Intensity, string>,
	walksInstead: 'Brisk walks of the same length instead of the runs.',
	from: {
		speed: 'from the speed of the phase',
		'slowest-run': 'at the slowest running speed, 5 km/h',
		'recovery-speed': 'walking at 4.5 km/h',
		range: 'held in the middle of the band'
	},
	none: {
		closed: 'There is no picture, because the result is not open today.',
		'pulse-off': 'There is no picture, because pulse numbers are off. Go by the line.',
		'pulse-not-known': 'There is no picture yet. It needs a resting pulse.'
	} satisfies Record<NoCourse['why'], string>,
	noEstimate:
		'There is no estimate. This run would be more than everything this runner has. Start with runs of 20 to 30 seconds.',
	empty: 'Add a first phase, and the picture comes.',
	overTop: {
		moderate: 'This is more than is open to this runner now: 59 % of the reserve at most.',
		'first-weeks': 'This is more than is open in the first eight weeks: under 80 % of the reserve.'
	},
	fit: {
		longest: (time: string) => `The longest run that stays in the band here: ${time}.`,
		noLimit: 'This run stays in the band, however long.',
		noRun: 'The pulse is still over the band when this run begins. Give it a longer walk before.',
		tooLong: (time: string) => `This run is longer than the band allows. ${time} fits.`,
		recovered: (time: string) => `The pulse is back in its range after ${time}.`,
		tooShort: (time: string) => `This walk is too short for the pulse to come back. ${time} fits.`,
		never: 'At this speed the pulse never comes back into its range. Walk slower.',
		tooFast: 'This walk is faster than the band allows. Walk slower.'
	},
	group: {
		median: 'The middle of the group',
		spread: 'Two in three of the group are inside the shaded part.',
		of: (drawn: number, all: number) => `Drawn for ${drawn} of ${all}.`,
		notDrawn: (why: NotDrawn, runners: number) => `${runnersAre(runners)} ${notDrawn[why]}`,
		walkInstead: (runners: number) =>
			runners === 1
				? 'One runner walks briskly instead.'
				: `${runners} runners walk briskly instead.`
	},
	change: {
		title: 'What to change',
		nothing: 'Every phase fits everybody who has a curve.',
		runTooLong: (misfits: number, runners: number, fits: string | null) =>
			`For ${misfits} of ${runners} this run is longer than their band allows. ${
				fits === null ? 'Give them a longer walk before it.' : `${fits} fits all.`
			}`,
		recoveryTooShort: (misfits: number, runners: number, fits: string | null) =>
			`For ${misfits} of ${runners} this walk is too short for the pulse to come back. ${
				fits === null ? 'It has to be slower.' : `${fits} fits all.`
			}`,
		walkTooFast: (misfits: number, runners: number) =>
			`For ${misfits} of ${runners} this walk is faster than their band allows.`,
		set: (time: string) => `Set it to ${time}`
	}
};

const notDrawn: Readonly<Record<NotDrawn, string>> = {
	closed: 'not drawn, because their result is not open today or they do not share it.',
	'pulse-off': 'not drawn, because their pulse numbers are off.',
	'pulse-not-known': 'not drawn, because their resting pulse is not known.',
	'over-reserve':
		'not drawn: a run here is too much for an estimate. They start with 20 to 30 seconds.'
};
