import type { PhaseKind } from '$lib/outing/phase.ts';
import { fromTo } from './from-to.ts';
import { helpHere } from './help-here.ts';
import { plural } from './plural.ts';

/** Words that stand on paper, and on the pages that print it. */
export const paper = {
	print: 'Print',
	sheet: 'A sheet to print',
	how: 'Fits A4 and Letter. Print at 100 %, not “fit to page”, so that the cards keep their size.',
	noScript: 'Print it from the menu of your browser.',
	back: 'Back',
	noNumber: {
		title: 'No emergency number yet',
		text: 'Nothing is printed for this group before it has an emergency number. We never guess one.',
		set: 'Write down the emergency number',
		askOwner: 'Ask an owner of the group to write it down.'
	},
	index: {
		title: 'Print',
		lead: 'Paper for the group. It holds what is true today: print it again when bands or results change.',
		papers: {
			cards: {
				title: 'Cards for the runners',
				text: 'A pocket card for each runner who may walk or run today, four on a sheet. Fold each one in the middle.'
			},
			wall: {
				title: 'Sheets for the wall',
				text: 'Each part with its line and how it should feel, to be read from two metres and more. No names, no pulse.'
			},
			'stop-signs': {
				title: 'Sheet with the signs to stop',
				text: 'When to stop and whom to call, with your emergency number, meeting point, defibrillator and first aider.'
			},
			cues: {
				title: 'Cue sheet for an outing',
				text: 'What to call out and when, for the coach’s hand.'
			}
		},
		nextCues: (date: string) => `Cue sheet for ${date}`,
		plainCues: 'Cue sheet for a plain outing',
		cuesOfOwn: 'For one of your library:',
		cuesOf: 'That sheet is of a plain outing. Of your own:',
		own: 'Runners print their own card from their bands page.'
	},
	card: {
		title: 'Your card',
		lead: 'Pocket cards to cut out and fold, and one large card. They hold what is true today. Print them again when something changes.',
		link: 'Print my card',
		noNumber: 'You have not chosen an emergency number yet, so the cards have a line to write on.',
		chooseNumber: 'Choose your emergency number',
		nameless: 'My bands',
		until: {
			run: (date: string) => `may run until ${date}`,
			talk: (date: string) => `may run, by talk, until ${date}`,
			walk: (date: string) => `may walk until ${date}`
		},
		short: (longest: string, result: string) => `runs of ${longest} at most; ${result}`,
		settling: (date: string, until: string) =>
			`walking only until ${date} at least; result until ${until}`,
		printedOn: (date: string) => `Printed on ${date}`,
		order: 'Talk first, then how it feels, then the pulse.',
		orderByTalk: 'Talk first, then how it feels.',
		bpm: 'bpm',
		under: (high: number) => `under ${high}`,
		range: fromTo,
		feels: (low: number, high: number) => `feels ${fromTo(low, high)}`,
		feelsOf: 'feels, of 10',
		count: 'count 15 s',
		speed: 'speed',
		byItsEnd: 'by its end',
		care: (bpm: number) => `Limit from your care team: ${bpm} beats a minute`,
		estimates:
			'Estimates. A maximum worked out from age is ten beats or more off for nearly two people in five.',
		resting: 'resting',
		maximum: 'maximum',
		setOn: (date: string) => `Set with your coach on ${date}`,
		fold: 'fold here',
		stop: 'Stop at once, and call for help',
		call: (number: string) => `Call ${number}`,
		callBlank: 'Emergency number: ______________',
		signs: [
			'pain, pressure or tightness in the chest, arm, back or jaw',
			'breath that does not come back',
			'faint, confused, or speech not clear',
			'a face that droops or an arm that is weak',
			'very hot and staggering'
		],
		alsoStop:
			'Stop and rest: dizzy, sick, a racing heart, sharp or new pain. Ask before the next outing.',
		ease: 'You cannot say the line any more? Slow to a walk.',
		meet: (place: string) => `${helpHere.meetingPoint}: ${place}`,
		defibrillator: (place: string) => `Defibrillator: ${place}`,
		nobody: 'Nobody in this group has bands to print today.',
		left: (count: number) =>
			plural(count, {
				one: '1 runner has no card today.',
				other: `${count} runners have no card today.`
			})
	},
	wall: {
		title: 'Sheets for the wall',
		lead: 'One part a sheet. Pin them side by side, in the order of the outing.',
		feels: (low: number, high: number) => `feels ${fromTo(low, high)} of 10`
	},
	stopSigns: {
		title: 'Signs to stop',
		...helpHere,
		notKnown: '______________________'
	},
	cues: {
		title: 'Cue sheet',
		link: 'Print a cue sheet of it',
		plain: 'Plain outing',
		total: (total: string, running: string, runs: number, longest: string) =>
			runs === 0
				? `${total} min, all of it walking`
				: `${total} min, ${running} min of it running in ${plural(runs, { one: '1 run', other: `${runs} runs` })}, the longest ${longest}`,
		picture: 'Walking along the line, a slur over each run',
		at: 'At',
		part: 'Part',
		lasts: 'Lasts',
		call: 'Call out',
		feels: 'Feels',
		run: (number: number, of: number) => `run ${number} of ${of}`,
		lastThird: 'In the last third, with breaths is fine.',
		notes: [
			'Before you start: ask everybody whether they are well today. Whoever says no goes home or walks with you.',
			'Whoever may walk, or is settling in, walks briskly in each run. Who has short runs walks on sooner.',
			'Whoever cannot say the line slows to a walk. Whoever needs longer to recover walks on into the next run.',
			'Do not let anybody stop dead after a run. Walk for six minutes or more at the end.'
		],
		usual: 'The lengths are a plain outing of ours, not a plan for your group.'
	},
	/** What a coach calls out as a part begins. */
	callOut: {
		'warm-up-walk': 'Walk, and talk.',
		'brisk-walk': 'Walk briskly. Still whole sentences.',
		'steady-run': 'Run gently. Say your line.',
		'recovery-walk': 'Walk. Let the talk come back.',
		'cool-down-walk': 'Walk, slower and slower.'
	} as Record<PhaseKind, string>
};
