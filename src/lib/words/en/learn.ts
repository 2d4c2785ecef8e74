import type { Effort, TalkLevel } from '$lib/physiology/effort-scale.ts';
import { plural } from './plural.ts';

export const learn = {
	title: 'Learn the feel',
	lead: 'What does comfortable, but working, feel like? Your voice can tell you, and nobody else can feel it for you. These short lessons train the ear and the body.',
	restTitle: 'Sitting down',
	rest: 'No effort is asked here. Anybody may try these, whatever the first questions said.',
	movingTitle: 'While you move',
	moving: 'These ask for effort, so they open with your result.',
	coachTitle: 'For coaches',
	minutes: (minutes: number) =>
		`about ${minutes} ${plural(minutes, { one: 'minute', other: 'minutes' })}`,
	back: 'All lessons',
	lessons: {
		talk: {
			title: 'The talk test',
			text: 'Read a short text aloud, then say how it went.'
		},
		scale: {
			title: 'The effort scale, 0 to 10',
			text: 'What each number feels like, and where you know it from.'
		},
		'one-breath': {
			title: 'Counting on one breath',
			text: 'How far you can count, and what studies made of it.'
		},
		'talk/moving': {
			title: 'The talk test while you walk',
			text: 'The same test at work, and what each answer asks of you.'
		},
		edge: {
			title: 'Find the edge',
			text: 'Short stretches, a little harder each, as far as talk allows.'
		},
		guess: {
			title: 'Guess, then look',
			text: 'Guess effort and pulse, then see how close you were.'
		},
		'one-breath/moving': {
			title: 'One breath while you move',
			text: 'Your own share, and what it says.'
		},
		teach: {
			title: 'A lesson in ten minutes',
			text: 'A plan to print, and how to hear effort in a voice.'
		}
	},
	disagree: {
		title: 'When talk, effort and pulse do not agree',
		lead: 'Talk comes first. Then how it feels. The pulse is third, because your true numbers may lie ten beats or more from the estimate.',
		caption: 'What you notice, and what to do',
		columns: { notice: 'You notice', act: 'Do this', why: 'Why' },
		rows: [
			{
				notice: 'You feel unwell, or a sign to stop.',
				act: 'Stop. No number counts now.',
				why: 'A number cannot see how you are.'
			},
			{
				notice: 'Talk breaks off, and the pulse is inside your band.',
				act: 'Ease off until you can say the line.',
				why: 'The band may be too high for you, or the pulse is still catching up.'
			},
			{
				notice: 'Talk is comfortable, and the effort feels like 7 or more.',
				act: 'Ease off.',
				why: 'You may be tired, warm, or sore. How it feels counts before the pulse.'
			},
			{
				notice: 'Talk is comfortable, and the pulse is above your band.',
				act: 'Do not go faster. On a hot day, after a bad night or a cold, ease off.',
				why: 'The estimate may be low for you. Heat, coffee, stress and lost sleep raise the pulse too. A watch can mistake your steps for beats: count by hand.'
			},
			{
				notice: 'Talk is comfortable, and the pulse is below your band.',
				act: 'Stay as you are. There is nothing to chase.',
				why: 'The pulse needs about two minutes to catch up, and the estimate may be high for you.'
			}
		],
		after:
			'If they disagree on three outings, tell your coach, and say so beside the band. If you take a medicine that changes the pulse, go by talk and effort alone.',
		basis:
			'That talk comes first is our own rule. In one study people sometimes passed the talk test above the point it should mark (Foster 2008), so we go by the easier of talk and effort.'
	}
};

export const talkTest = {
	title: 'The talk test',
	lead: 'Read aloud for about half a minute. Then ask yourself: could I speak comfortably?',
	sitTitle: 'Sitting down',
	sit: 'Read the text once while you sit still. Now you know how easy sounds, and how long it takes you.',
	another: 'Another text',
	words: (count: number) => `${count} words`,
	start: 'Start reading',
	stop: 'I have read it',
	running: (seconds: number) => `${seconds} s so far`,
	took: (seconds: number) =>
		`It took you ${seconds} seconds. Most people need 25 to 40, and no time is better than another.`,
	tooShort: 'That was too short for the whole text. Start again when you like.',
	noScript: 'Use any clock with seconds. It takes most people 25 to 40 seconds.',
	levelsTitle: 'Three answers',
	levels: {
		comfortable: {
			name: 'Comfortable',
			like: 'You could go on talking. Breaths fall where a comma or a full stop is.',
			act: 'This is where to be.'
		},
		'with-breaths': {
			name: 'With breaths',
			like: 'You can say it, but you breathe in the middle of a sentence, or you are not sure.',
			act: 'The edge. It is fine in the last third of a run, and a reason to ease off before that.'
		},
		'broke-off': {
			name: 'Broke off',
			like: 'You stop talking to get air.',
			act: 'Too hard. Walk until you can talk. Nobody needs to look for this one.'
		}
	} satisfies Record<TalkLevel, { name: string; like: string; act: string }>,
	movingTitle: 'And while you move',
	moving: 'That is a lesson of its own. It asks for effort, so it opens with your result.',
	basisTitle: 'What is known',
	basis: [
		'Fourteen adults who were not active went on for twenty minutes at the last pace before their talk changed. It felt steady and moderate to them (Foster 2009).',
		'A text of 93 words, about 29 seconds, found the point where breathing changes better than shorter ones did, in 18 healthy adults (Schroeder 2017).',
		'Ten weeks by the talk test alone made 44 inactive adults about as much fitter as ten weeks by pulse (Porcari 2018).',
		'It takes over two minutes at one effort before talk turns (Foster 2008).'
	]
};

/** Where the numbers of the effort scale are met in a day. Our own examples, no source. */
export const effortExamples: Record<Effort, string> = {
	0: 'Reading on the sofa.',
	1: 'Washing up, or standing in a queue.',
	2: 'Looking at shop windows.',
	3: 'Walking to the shop with time to spare.',
	4: 'Sweeping the floor, or walking the dog.',
	5: 'Walking to be on time.',
	6: 'Up a long hill with a friend, still telling the story.',
	7: 'Four flights of stairs without a rest.',
	8: 'The same stairs with heavy shopping.',
	9: 'Running for a bus that pulls out.',
	10: 'You have to stop within half a minute.'
};

export const effortScale = {
	title: 'The effort scale, 0 to 10',
	choose: 'Choose a number',
	option: (effort: number, words: string) => `${effort}: ${words}`,
	lead: '0 is sitting still. 10 is everything you have. Runs and brisk walks of a beginner live at 5 and 6.',
	caption: 'Each number, what you can say, and where you may know it from',
	columns: { number: 'Effort', say: 'What it is like', example: 'For example' },
	yours:
		'The examples differ from one person to the next: stairs are a 4 for some and an 8 for others. What you can say decides.',
	askTitle: 'Find your number with three questions',
	ask: [
		'What could I say now? Find the row whose words fit.',
		'Could I keep this up for half an hour? If not, it is 7 or more.',
		'Am I holding on to something, clenching my hands, frowning? Then add one.'
	],
	easeTitle: 'From 7 on, ease off',
	ease: 'Nothing in Breathmark asks for 7 or more. If you get there, slow down until you are back at 6 or less.',
	basis:
		'The scale is that of the US Physical Activity Guidelines (2018): 0 sitting, 5 and 6 moderate, from 7 or 8 vigorous, 10 the most you can do. The words and examples are our own, common practice, no source.'
};

export const oneBreath = {
	title: 'Counting on one breath',
	lead: 'How far can you count aloud before you need to breathe in? Effort takes some of that count away. How much is a clue to how hard somebody works.',
	steps: [
		'Sit for five minutes. Breathe normally.',
		'Take one deep breath in.',
		'Count aloud at an even pace: one one-thousand, two one-thousand, three one-thousand.',
		'Stop at the last number before you want to breathe in. Do not squeeze out more.',
		'Do it twice more, with a rest between. The middle one of the three is your count.'
	],
	stepsTitle: 'Your count at rest',
	care: 'Stop if you feel dizzy. With asthma or another lung problem the count may be short: that is no fault, and the talk test suits you better.',
	meansTitle: 'What the share means',
	means:
		'People in studies counted a second time while they moved. This is how much was left of their count at rest.',
	caption: 'Count while moving, as a share of the count at rest',
	columns: { rest: 'Count at rest', share: 'Share while moving', means: 'In the studies' },
	under: (count: number) => `under ${count}`,
	from: (count: number) => `${count} or more`,
	share: (low: string, high: string) => `${low}–${high}`,
	moderate: 'moderate to vigorous effort',
	more: 'A larger share was easier than that, a smaller one harder.',
	moving:
		'Your own share is a lesson of its own. It asks for effort, so it opens with your result.',
	example: (rest: number, low: number, high: number) =>
		`An invented example: somebody who counts to ${rest} at rest would count to ${low} or ${high} there.`,
	basis:
		'Measured in healthy adults of about 20 to 31 years (Norman 2001 and 2008, Loose 2012). Nobody has checked it in older people who begin, so we use it to practise only, and the talk test leads.'
};
