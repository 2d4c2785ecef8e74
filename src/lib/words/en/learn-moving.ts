import type { EdgeGoal, EdgeStretch } from '$lib/guidance/edge.ts';
import { guessAnswers } from './guess-answers.ts';

/** Lessons that ask for effort. */
export const edge = {
	title: 'Find the edge',
	lead: {
		'with-breaths':
			'A few short stretches, each a little harder. Stop at the first one where talk comes with breaths. That is the edge, and your outings belong one step below it.',
		comfortable:
			'A few short stretches, each a little harder, as long as talk stays comfortable and it feels like 4 or less. Your result asks you to stay comfortable, so stop at the first doubt.'
	} satisfies Record<EdgeGoal, string>,
	never:
		'Nobody has to run out of breath here. If you have to stop talking, you have gone too far.',
	before: [
		'Warm up with a walk of at least six minutes.',
		'Take somebody with you, or learn a text by heart. Do not read while you move.',
		'On a treadmill: clip on the safety cord, and type only from a slow walk.'
	],
	beforeTitle: 'Before you begin',
	pulse: (bpm: number, count15: number) =>
		`If your pulse is over ${bpm} (more than ${count15} beats in 15 seconds), do not go up a step, whatever talk says.`,
	byTalk: 'There is no pulse number here: go by talk, then by the effort number.',
	stretchTitle: (n: number, of: number) => `Stretch ${n} of ${of}`,
	stretches: {
		'easy-walk': 'Walk at an easy pace. You could tell a long story.',
		'brisk-walk': 'Walk briskly, as if to be on time.',
		'faster-walk':
			'Walk a little faster than that: two notches on a treadmill, or 1 % more incline, or a gentle hill.',
		'fastest-walk': 'One step more: two notches or 1 % more incline. Still a walk, no running.',
		'slow-run': 'Run as slowly as you can, slower than you could walk if you like.'
	} satisfies Record<EdgeStretch, string>,
	how: 'Keep one pace for two and a half minutes. For the last half minute speak aloud, then answer.',
	clock: {
		start: 'Start the stretch',
		stop: 'Stop the clock',
		left: (time: string) => `${time} left`,
		speak: 'Speak aloud now.',
		done: 'Ease to a slow walk, and answer.'
	},
	noScript: 'Use any clock with seconds.',
	talk: 'Could you speak comfortably?',
	effort: 'How did it feel?',
	answer: 'That was it',
	again: 'Begin again',
	go: 'Walk slowly for a minute or two, until you could chat. Then the next stretch.',
	outcomeTitle: {
		found: 'That is the edge, for today',
		stay: 'That is high enough, for today',
		'ease-off': 'That is enough, for today',
		'too-far': 'Walk now, slowly',
		'comfortable-throughout': 'You were comfortable all the way'
	},
	outcome: {
		found: {
			'with-breaths':
				'You have heard where talk changes. Go back one step: there you can stay for long. That is where your outings belong.',
			comfortable:
				'Go back one step, to where talk was plainly comfortable. That is where your outings belong.'
		} satisfies Record<EdgeGoal, string>,
		first:
			'That was the easiest step. Stay at a stroll today. If it is so again another day, tell your coach, or ask a doctor or nurse.',
		stay: {
			'with-breaths':
				'Talk was comfortable, and it felt like 6: one sentence, then a breath. One step more would be past the edge. Stay at this one, or one below it.',
			comfortable:
				'Talk was comfortable, and it felt like 5: whole sentences, breathing deeper. One step more would be past comfortable. Stay at this one. That is where your outings belong.'
		} satisfies Record<EdgeGoal, string>,
		'ease-off': {
			'with-breaths':
				'It felt like 7 or more. How it feels counts too, whatever talk says. Go back one step and stay there.',
			comfortable:
				'It felt like 6 or more. How it feels counts too, and comfortable ends there. Go back one step and stay there.'
		} satisfies Record<EdgeGoal, string>,
		'too-far':
			'Talking broke off. That is further than this goes. Walk slowly until you can talk. No more stretches today; another time, stop one step before.',
		'comfortable-throughout':
			'Stop here. There is no need to go harder to learn it. Remember this pace: it is inside your edge.'
	},
	unwell: 'If you feel unwell, stop.',
	notStored: 'None of this is stored.',
	down: 'Then walk slowly for six minutes. Do not stop all at once.',
	issues: {
		talk: { missing: 'Pick one of the three.', 'unknown-option': 'Pick one of the three.' },
		effort: {
			missing: 'Choose a number from 0 to 10.',
			'not-a-number': 'Choose a number from 0 to 10.',
			'not-whole': 'Choose a number from 0 to 10.',
			'too-low': 'Choose a number from 0 to 10.',
			'too-high': 'Choose a number from 0 to 10.'
		},
		stretch: {}
	} as Record<string, Record<string, string>>
};

export const movingTalk = {
	title: 'The talk test while you walk',
	lead: 'You know how easy sounds. Now hear what work does to it.',
	sitting: 'The talk test, sitting down',
	steps: [
		'Warm up with an easy walk of at least six minutes.',
		'Walk briskly at one pace for two minutes.',
		'Keep that pace and speak for half a minute: a text that you know by heart, or what your week was like. On a treadmill hold nothing to read. Look ahead, and let somebody else read it to you line by line.',
		'Ask yourself: could I speak comfortably?',
		'Then walk slowly for six minutes. Do not stop all at once.'
	],
	actTitle: 'What your answer asks of you',
	comfortable: 'This is where to be. Stay there.',
	withBreaths: {
		'with-breaths':
			'The edge. Ease off a little, until talk is comfortable. In an outing it is fine in the last third of a run, and nowhere else.',
		comfortable:
			'Ease off now, until talk is comfortable again. Your result asks you to stay there.'
	} satisfies Record<EdgeGoal, string>,
	brokeOff: 'Too hard. Walk slowly until you can talk. Nobody needs to look for this one.',
	whenTitle: 'When it counts',
	when: [
		'Two minutes or more into the same effort. Before that your breath has not caught up, and talk flatters you.',
		'After about half a minute of talking. A “yes” or “fine” tells nothing.',
		'With the text, a story or a song. Not with counting, which is a lesson of its own.',
		'In short runs of half a minute there is no time for it. There the line of your band and the effort number lead.'
	],
	notStored: 'None of this is stored.'
};

export const movingBreath = {
	title: 'One breath while you move',
	lead: 'Set your count while moving against your count at rest.',
	atRest: 'How to count at rest',
	steps: [
		'Walk briskly at one pace for two minutes or more.',
		'Breathe in once, then count aloud at the same even pace as at rest.',
		'Stop at the last number before you want to breathe in.'
	],
	rest: 'Count at rest',
	moving: 'Count while moving',
	work: 'See my share',
	share: (counted: number, rest: number, share: string) =>
		`${counted} of ${rest}: that is ${share} of your count at rest.`,
	efforts: {
		easier: 'That is easier than the range of the studies. It is a good place for a long walk.',
		there: 'That lies in the range of the studies: moderate effort, or a little more.',
		harder: 'That is harder than this range. Ease off.'
	},
	aim: (low: number, high: number) =>
		`With your count at rest the range is ${low === high ? low : `${low} to ${high}`}.`,
	aimOrMore: (low: number) =>
		`Your result asks you to stay comfortable: with your count at rest that is ${low} or more.`,
	first: 'Talk comes first. If you could not talk comfortably, ease off whatever the count says.',
	notStored: 'The counts are not stored.',
	issues: {
		missing: 'Type the last number that you reached.',
		'not-a-number': 'Type a number, such as 12.',
		'not-whole': 'Type a whole number.',
		'too-low': 'That is very short. Count again, one deep breath at a time.',
		'too-high': 'That is very long. Count again at an even pace, about one number a second.',
		'over-rest': 'That is further than at rest. Count at rest once more, after five quiet minutes.'
	} as Record<string, string>
};

export const guessing = {
	...guessAnswers,
	title: 'Guess, then look',
	lead: 'Guess first, then look. After a few times you need the number less and less.',
	leadByTalk:
		'Guess the effort first, then speak aloud and see whether they fit. After a few times your guess is as good as the test.',
	when: 'In the last minute of a part, keep your pace and decide on your guess. On a treadmill, slow to a walk before you type. Outdoors, stroll where nobody runs into you.',
	prompterLead:
		'The prompter can ask you on the way: tick “Practise: guess, then look” before you start. It then hides the pulse until you have guessed. Those guesses are drawn here too.',
	prompterLeadByTalk:
		'The prompter can ask you on the way: tick “Practise: guess, then look” before you start. Those guesses are drawn here too.',
	prompter: 'To the prompter',
	guessTitle: 'Your guess',
	phase: 'Which part is it?',
	shortRun:
		'In runs of under two minutes the pulse has not caught up. Use a walk, or guess the effort alone in your mind.',
	effort: 'How hard does it feel?',
	pulse: 'What is your pulse?',
	pulseHint: 'Beats a minute. Any guess is good the first time.',
	keep: 'Keep my guess',
	lookTitle: 'Now look',
	guessed: (phase: string, effort: number) => `${phase}: you guessed effort ${effort}.`,
	guessedPulse: (phase: string, effort: number, bpm: number) =>
		`${phase}: you guessed effort ${effort} and ${bpm} beats a minute.`,
	lookSteps: [
		'Go back to the same pace for a minute.',
		'Speak aloud for half a minute: the text below, a story, a song.',
		'Then slow to a stroll, walk on, and count your pulse at once. Wait even 15 seconds and it reads 15 beats or more too low.'
	],
	lookStepsByTalk: [
		'Go back to the same pace for a minute.',
		'Speak aloud for half a minute: the text below, a story, a song.'
	],
	text: 'A text to speak',
	talk: 'Could you speak comfortably?',
	method: 'How did you look?',
	methods: {
		'15': 'Counted for 15 seconds: exact to about 4 beats a minute',
		'10': 'Counted for 10 seconds: exact to about 6 beats a minute',
		device: 'A chest strap or a watch showed it'
	} as Record<string, string>,
	beats: 'Beats that you counted, or the number that was shown',
	see: 'See how close I was',
	drop: 'Throw this guess away',
	lastTitle: 'Last time',
	lastEffort: (effort: number, talk: string) => `You guessed effort ${effort}; talk: ${talk}.`,
	talkNames: {
		comfortable: 'comfortable',
		'with-breaths': 'with breaths',
		'broke-off': 'broke off'
	} as Record<string, string>,
	close:
		'Ten beats either way is a good guess. A count by hand reads some 6 to 10 beats low, because the pulse falls as soon as you slow down.',
	historyTitle: 'Are you getting closer?',
	none: 'Your guesses will stand here. After six of them we say whether they get closer.',
	closer: {
		beats: (first: string, last: string) =>
			`Pulse: your first three were ${first} beats off on average, your last three ${last}.`,
		steps: (first: string, last: string) =>
			`Effort: your first three were ${first} steps off on average, your last three ${last}.`
	},
	chart: {
		text: {
			beats:
				'Pulse: how many beats off each guess was, oldest first. The line in the middle is exactly right. The same numbers stand in the table below.',
			steps:
				'Effort: how many steps each guess was from what talk said, oldest first. On the line in the middle they fit. The same numbers stand in the table below.'
		},
		titles: { beats: 'Pulse', steps: 'Effort' },
		noScript: 'The picture needs script. The table has the same numbers.',
		axis: { beats: 'beats off', steps: 'steps off' },
		tries: 'guess'
	},
	caption: 'Your guesses, newest first',
	columns: {
		on: 'Day',
		phase: 'Part',
		effort: 'Effort guessed',
		talk: 'Talk',
		effortOff: 'Steps off',
		guessed: 'Pulse guessed',
		seen: 'Pulse seen',
		off: 'Beats off'
	},
	signed: (off: number) => (off > 0 ? `+${off}` : off < 0 ? `−${-off}` : '0'),
	noPulse: '–',
	remove: 'Remove',
	removeOf: (date: string, phase: string) => `Remove the guess of ${date}, ${phase}`,
	ofOuting: 'In an outing',
	ofOutingOf: (date: string) => `In the outing of ${date}`,
	removeAll: 'Remove all guesses made here',
	stored:
		'Your guesses are stored encrypted. No coach sees them. You can remove them here. Those made in an outing go when you delete that outing.',
	basis:
		'A count after stopping: 20 active adults were 7 to 9 beats low in the first 15 seconds, and 20 to 27 after waiting 15 seconds (De Van 2005). What counts as close is our own, no source.',
	issues: {
		phase: { missing: 'Pick the part.', 'unknown-option': 'Pick the part.' },
		effort: {
			missing: 'Choose a number from 0 to 10.',
			'not-a-number': 'Choose a number from 0 to 10.',
			'not-whole': 'Choose a number from 0 to 10.',
			'too-low': 'Choose a number from 0 to 10.',
			'too-high': 'Choose a number from 0 to 10.'
		},
		pulse: {
			missing: 'Type a guess, such as 120.',
			'not-a-number': 'Type a number, such as 120.',
			'not-whole': 'Type a whole number, such as 120.',
			'too-low': 'That is lower than a pulse can be. Guess again.',
			'too-high': 'That is higher than a pulse can be. Guess again.'
		},
		talk: { missing: 'Pick one of the three.', 'unknown-option': 'Pick one of the three.' },
		method: { missing: 'Pick how you looked.', 'unknown-option': 'Pick how you looked.' },
		beats: {
			missing: 'Type the number.',
			'not-a-number': 'Type a number, such as 33.',
			'not-whole': 'Type a whole number.',
			'too-low': 'That gives a pulse too low to be true. Look again at how you counted.',
			'too-high': 'That gives a pulse too high to be true. Look again at how you counted.'
		}
	} as Record<string, Record<string, string>>
};
