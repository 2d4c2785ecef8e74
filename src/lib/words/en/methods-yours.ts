import type { PhaseKind } from '$lib/outing/phase.ts';
import { bands } from './bands.ts';
import { plural } from './plural.ts';

export const yours = {
	title: bands.yours,
	linkHint: 'For whoever may run or walk by their result.',
	lead: 'How the app comes to your band, with each doubt and each source. You see one digit after the point. The app rounds only in the last step.',
	leadOff: 'How the app comes to what it tells you. For you it goes by talk and by feel alone.',
	parts: 'Part of the outing',
	talkTitle: 'Talk and effort come first',
	talk: 'You should be able to say this line in this part:',
	effort: (low: number, high: number) =>
		`It should feel like ${low} to ${high} of 10. These come from the talk test and the effort scale. No number of yours goes into them.`,
	effortDoubt: 'People rate the same effort up to a step apart. The line decides.',
	maximumTitle: 'Your maximum pulse',
	maximum: {
		age: (sum: string, maximum: string, spread: string) =>
			`${sum} = ${maximum}. Doubt: ${spread} beats either way.`,
		'supervised-test': (_sum: string, maximum: string, spread: string) =>
			`From your supervised test: ${maximum}. Doubt: ${spread} beats either way.`,
		'age-and-highest-seen': (_sum: string, maximum: string, spread: string) =>
			`From your age and the highest pulse that you reached: ${maximum}. Doubt: ${spread} beats either way.`
	},
	maximumSum: (beginsAt: number, perYear: string, age: number) =>
		`${beginsAt} − ${perYear} × ${age}`,
	doubtMeans: 'A doubt is such that two people in three lie within it, and one in three outside.',
	restingTitle: 'Your resting pulse',
	resting: (mornings: number, resting: string, spread: string, ofOne: number) =>
		plural(mornings, {
			one: `One morning: ${resting}. Doubt: ${spread} beats.`,
			other: `The mean of ${mornings} mornings: ${resting}. Doubt: ${ofOne} ÷ √${mornings} = ${spread} beats.`
		}),
	reserveTitle: 'Your reserve',
	reserve: (maximum: string, resting: string, reserve: string) =>
		`Maximum less resting: ${maximum} − ${resting} = ${reserve}.`,
	shareTitle: 'The share for this part',
	share: (low: string | null, high: string) =>
		low === null
			? `Anything under ${high} of the reserve.`
			: `From ${low} to ${high} of the reserve.`,
	shareFrom: {
		'warm-up-walk': 'Light, rising to moderate effort. The edges are our own choice.',
		'brisk-walk': 'Moderate effort, as Garber 2011 puts it.',
		'steady-run':
			'Our own choice. Adults who were not active could still talk comfortably there (Foster 2009).',
		'recovery-walk': 'Our own choice: the pulse comes down, and talk comes back.',
		'cool-down-walk': 'Light effort by the end of it, as Garber 2011 puts it.'
	} satisfies Record<PhaseKind, string>,
	shareSet: 'You and your coach set this one, inside what your result allows.',
	edgesTitle: 'The edges of the band',
	edge: (
		which: string,
		share: string,
		reserve: string,
		ofReserve: string,
		resting: string,
		bpm: string
	) => `${which}: ${share} of ${reserve} is ${ofReserve}. Plus ${resting} makes ${bpm}.`,
	low: 'Lower edge',
	high: 'Upper edge',
	doubtTitle: 'The doubt of the edges',
	doubt: (which: string, resting: string, maximum: string, spread: string) =>
		`${which}: ${resting} comes from the resting pulse and ${maximum} from the maximum. √(${resting}² + ${maximum}²) = ${spread} beats.`,
	roundTitle: 'Round, once',
	round: (low: number | null, high: number) =>
		low === null ? `Your band: under ${high} bpm.` : `Your band: ${low} to ${high} bpm.`,
	roundRule: 'Half a beat goes up.',
	limit: (bpm: number) =>
		`Your care team set a limit of ${bpm}. It takes the place of the upper edge.`,
	count: (low: number | null, high: number) =>
		low === null
			? `In 15 seconds: up to ${high} beats.`
			: `In 15 seconds: ${low} to ${high} beats.`,
	speedTitle: 'Speed',
	needResting:
		'The next steps need your resting pulse. Measure it, and they stand here with your own numbers.',
	sources: 'Sources:',
	back: 'Your effort bands'
};
