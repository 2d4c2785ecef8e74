import { intensityLine } from './intensities.ts';
import { spokenLength } from './outings.ts';

/** What a runner reads about the own pulse in an outing that they build. */
export const ownPicture = {
	title: 'What your pulse may do',
	illustration:
		'An illustration: nobody’s pulse is known beforehand. The line that you can say decides.',
	text: (bpm: number, at: string) =>
		`Expected pulse through the outing, highest about ${bpm} beats a minute at ${at}. The table has the same.`,
	time: 'Minutes. An illustration.',
	level: 'Beats a minute',
	caption: 'Expected at the end of each phase, in beats a minute',
	said: {
		peak: (bpm: number, spread: number, at: string) =>
			`Highest: about ${bpm} beats a minute at ${at}, give or take ${spread}.`,
		mean: (bpm: number, spread: number) =>
			`On the average: about ${bpm} beats a minute, give or take ${spread}.`,
		intensity: intensityLine,
		longest: {
			seconds: (seconds: number) =>
				`Longest run that is expected to stay inside your band: ${spokenLength(seconds)}.`,
			'no-limit': 'Your runs are expected to stay inside your band, however long they are.',
			none: 'Longest run inside your band: none. Your pulse is still up when a run begins. Walk longer before it.'
		},
		recovery: {
			seconds: (seconds: number) =>
				`Shortest walk that brings you back down after a run: ${spokenLength(seconds)}.`,
			ready: 'You are back down before every walk between is over.',
			never:
				'Shortest walk that brings you back down: never. One of the walks between is too fast to recover in. Walk slower.'
		},
		overTop:
			'More is expected here than is open to you for now. Make the runs shorter, or walk longer between them.'
	},
	noEstimate:
		'No estimate: a run asks for more here than can be reckoned with. Start with runs of 20 to 30 seconds, and go by the line.',
	measure:
		'Once you have measured a resting pulse, this page draws what your pulse may do in the outing.',
	measureLink: 'Measure my resting pulse'
};
