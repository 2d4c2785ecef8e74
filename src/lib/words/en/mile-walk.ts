import type { CapacityRefusalCode } from '$lib/physiology/capacity.ts';

export const mileWalkWords = {
	title: 'Mile walk',
	lead: 'One mile, walked as fast as you can. From your time and your pulse we can name speeds for you. It needs no treadmill, and it is hard effort.',
	closed: {
		'pulse-off':
			'There is no mile walk for you, because pulse numbers could be wrong for you. Go by the line and by how it feels.',
		'not-for-now':
			'The mile walk is hard effort. By your result it is not for you for now. The walk check stays easy and gives the same.',
		'care-team-limit':
			'The mile walk is hard effort, and you have a limit from your care team. The walk check stays easy and gives the same.',
		'outside-study':
			'The mile walk was studied with people from 30 to 69 years. For you its number could be wrong. The walk check gives the same.'
	},
	walkCheck: 'To the walk check',
	cautionsTitle: 'Before you begin',
	cautions: [
		'Only on a day when you feel well, not in heat, and best with somebody near. Walk easily for six minutes first.',
		'Walk, never run: one foot is always on the ground.',
		'Go as fast as you can keep up. Slow down or stop whenever you want to: then there is just no number today.',
		'Stop at once at any sign to stop, and look at the signs before you begin.'
	],
	stop: 'Signs to stop',
	stepsTitle: 'How it goes',
	steps: [
		'Pick a flat way of one mile: 1,609 metres. On a 400 m track that is four rounds and 9 metres. On a treadmill it is 1.00 mile or 1.61 km.',
		'Take the time from start to end.',
		'With a strap, look at your pulse now and then in the last quarter, and keep the middle in mind. Without one, count your beats for 15 seconds at the end, while you walk on slowly.',
		'Then walk slowly for six minutes.'
	],
	clock: {
		start: 'Start the mile',
		going: (time: string) => `${time} so far`,
		quarter: 'In the last quarter, look at your pulse now and then.',
		done: 'The mile is done',
		count: (seconds: number) => `Count your beats now: ${seconds} s left. Walk on slowly.`,
		type: 'Your time stands below. Type your pulse, then walk slowly for six minutes.',
		tooLong: 'That is longer than a mile walk takes. Start again on another day.',
		notKnown: 'The clock of this phone was changed. Please start again.',
		again: 'Start again',
		restored: 'We kept your time and what you typed.',
		noScript: 'The clock needs script. Without it, use your own watch.'
	},
	weight: 'Your weight',
	weightUnit: 'In which unit?',
	weightUnits: { kg: 'Kilograms', lb: 'Pounds' },
	sex: 'Sex, for the equation',
	sexHint:
		'It was made with two groups only. For the same walk it gives a man 6 more than a woman. If you would rather not say, we take the lower number, so that no speed is too fast.',
	sexes: { woman: 'Woman', man: 'Man', none: 'I would rather not say' },
	time: 'Time for the mile',
	timeHint: 'Minutes and seconds, such as 15:20.',
	read: 'How did you read your pulse?',
	reads: {
		minute: 'A strap, or another reading for a full minute',
		'count-15': 'I counted beats for 15 seconds'
	},
	pulse: 'Your pulse',
	pulseHint: 'As you read it: for a minute, or the beats of 15 seconds.',
	age: (years: number) => `Your age, ${years}, comes from your result.`,
	save: 'Work it out',
	kept: (date: string, value: string, spread: string) =>
		`From your mile walk of ${date}: about ${value} mL/kg/min, give or take ${spread}. It is an estimate, and the speeds on your page are unsure by 15 to 20 %.`,
	lower:
		'You would rather not say your sex, so this is the lower of two numbers. It may be 6 too low.',
	noLonger: (date: string) =>
		`Your mile walk of ${date} no longer fits the rest of what we know. Please do it again.`,
	again: 'You can do it again after some weeks. The newest one counts.',
	remove: 'Delete this mile walk',
	back: 'Back to my bands',
	fields: { weight: 'Weight', weightUnit: 'Unit', time: 'Time', read: 'How you read it' },
	issues: {
		missing: 'Fill this in.',
		'not-a-number': 'Type a number, such as 72.5.',
		'not-whole': 'Type a whole number.',
		'not-a-time': 'Write minutes and seconds, such as 15:20.',
		'faster-than-a-walk': 'Under 8 minutes nobody walks a mile. Was there a run in it?',
		'slower-than-a-walk': 'Over 40 minutes it is a stroll: the equation does not know it.',
		'too-low': 'That is lower than we can believe. A pulse is for a full minute.',
		'too-high': 'That is higher than we can believe. Please look again.',
		'count-too-low': 'That is too few for 15 seconds.',
		'count-too-high': 'That is too many for 15 seconds. Is it for a full minute?',
		'weight-too-low': 'That is less than an adult weighs. Is the unit right?',
		'weight-too-high': 'That is more than we can believe. Is the unit right?',
		'unknown-option': 'Pick one of these.'
	} as Record<string, string>,
	refused: {
		'out-of-limits': 'These numbers do not fit together. Please look at them again.',
		'outside-study': 'The mile walk was studied with people from 30 to 69 years.',
		'pulse-for-a-full-minute': 'That is lower than we can believe. A pulse is for a full minute.',
		'not-enough-stages': 'These numbers do not fit together.',
		'pulse-does-not-rise': 'These numbers do not fit together.',
		'pulse-rises-too-little': 'These numbers do not fit together.',
		'pulse-above-maximum': 'This pulse is above what we take for your maximum.',
		'too-unsure': 'These numbers do not fit together.'
	} satisfies Record<CapacityRefusalCode, string>
};
