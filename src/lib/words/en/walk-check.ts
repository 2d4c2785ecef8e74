import type { CapacityRefusalCode } from '$lib/physiology/capacity.ts';

export const walkCheckWords = {
	title: 'Walk check',
	lead: 'Three walks of three minutes on a flat treadmill. From how your pulse answers we can name speeds for you. Nothing here is a race.',
	off: 'There is no walk check for you, because pulse numbers could be wrong for you. Go by the line and by how it feels.',
	cautionsTitle: 'Before you begin',
	cautions: [
		'Only on a day when you feel well. Walk easily for six minutes first.',
		'Each walk must stay comfortable: whole sentences, all the way. If talk gets short, slow down and end the check.',
		'Stop at once at any sign to stop, and look at the signs before you begin.'
	],
	limit: (bpm: number) =>
		`Stay under ${bpm} beats a minute, the limit from your care team. End the check if you come near it.`,
	stepsTitle: 'How it goes',
	steps: [
		'Choose a slow, a middle and a brisk walking speed, such as 3.5, 4.8 and 6 km/h, or 2.2, 3 and 3.7 mph.',
		'Walk three minutes at the first speed. Keep your hands off the rail.',
		'In the last 15 seconds read your pulse from a strap. Without one, count your beats for 15 seconds while you walk on.',
		'Do the same at the second and the third speed. Then walk slowly for six minutes.'
	],
	walk: (nth: number) => `Walk ${nth}`,
	speed: (nth: number, unit: string) => `Speed of walk ${nth} (${unit})`,
	pulse: (nth: number) => `Pulse at the end of walk ${nth}`,
	pulseHint: 'As you read it: for a minute, or the beats of 15 seconds.',
	read: 'How do you read your pulse?',
	reads: {
		minute: 'A strap, or another reading for a full minute',
		'count-15': 'I count beats for 15 seconds'
	},
	save: 'Work it out',
	typeIn: 'Type in walks that you have done',
	guided: {
		lead: 'A clock can lead you through it: what to do when, and what to type.',
		begin: 'Begin, with the clock',
		noScript: 'The clock needs script. Without it, use your own watch and type in the walks below.',
		restored: 'We kept your place and what you typed.',
		prepareTitle: 'First, six easy minutes',
		prepare:
			'Walk easily for six minutes. Put the phone where you can see it without a hand on the rail. It may go dark: the clock stays right.',
		prepared: 'I have walked for six minutes',
		title: (nth: number) => `Walk ${nth} of 3`,
		set: [
			'Set a slow speed, at which you could chat for an hour.',
			'Set a middle speed, a clear step faster.',
			'Set a brisk speed, still with whole sentences.'
		],
		such: (speed: string, unit: string) => `Such as ${speed} ${unit}.`,
		speed: (unit: string) => `Speed on the display (${unit})`,
		start: 'Start three minutes',
		left: (time: string) => `${time} left`,
		moments: {
			walk: 'Walk on, hands off the rail. Say a sentence now and then: talk must stay easy.',
			'find-pulse': {
				minute: 'Soon: look at your pulse in the last seconds, and keep the number in mind.',
				'count-15': 'Find your pulse now, at the wrist. Keep walking.'
			},
			count: {
				minute: 'Read your pulse now, while you walk on.',
				'count-15': 'Count every beat now, until the time is up. Keep walking.'
			},
			over: 'Time is up. Type what you read.'
		},
		late: 'The time was up more than a minute ago. If you still walk at this speed, read your pulse now. If you stopped, do this walk again.',
		notKnown: 'The clock of this phone was changed. Please do this walk again.',
		pulse: {
			minute: 'Your pulse (beats a minute)',
			'count-15': 'Beats in 15 seconds'
		},
		talk: 'Could you speak in whole sentences?',
		talks: { yes: 'Yes, all the way', no: 'No, talk got short' },
		next: 'Go on to the next walk',
		again: 'Do this walk again',
		ended: {
			'too-short-of-breath':
				'That was brisk enough for today, so the check ends here. Walk slowly for six minutes. Another day, choose slower speeds.',
			'at-the-limit':
				'You are at the limit from your care team, so the check ends here. Walk slowly for six minutes.'
		},
		last: 'Now walk slowly for six minutes.',
		end: 'End it and forget what I typed'
	},
	kept: (date: string, value: string, spread: string) =>
		`From your walk check of ${date}: about ${value} mL/kg/min, give or take ${spread}. It is an estimate, and the speeds on your page are unsure by 15 to 20 %.`,
	noLonger: (date: string) =>
		`Your walk check of ${date} no longer fits the rest of what we know. Please do it again.`,
	again: 'You can do it again after some weeks. The newest one counts.',
	remove: 'Delete this walk check',
	back: 'Back to my bands',
	stop: 'Signs to stop',
	issues: {
		missing: 'Fill this in.',
		'not-a-number': 'Type a number, such as 4.5.',
		'not-whole': 'Type a whole number.',
		'too-low': 'That is lower than we can believe. A pulse is for a full minute.',
		'too-high': 'That is higher than we can believe, or faster than people walk.',
		'count-too-low': 'That is too few for 15 seconds.',
		'count-too-high': 'That is too many for 15 seconds. Is it for a full minute?',
		'not-faster': 'This walk has to be faster than the one before.',
		'not-said': 'Pick one.',
		'unknown-option': 'Pick one of these.'
	} as Record<string, string>,
	refused: {
		'out-of-limits': 'These numbers do not fit together. Please look at them again.',
		'outside-study': 'These numbers do not fit together. Please look at them again.',
		'pulse-for-a-full-minute': 'The pulse is for a full minute.',
		'not-enough-stages': 'Three walks are needed.',
		'pulse-does-not-rise': 'Your pulse should be higher at a faster walk. Please look again.',
		'pulse-rises-too-little':
			'The pulse rises by less than ten beats. Choose speeds that lie farther apart, if the fastest is still comfortable.',
		'pulse-above-maximum': 'This pulse is above what we take for your maximum. Please look again.',
		'too-unsure': 'The three walks do not fit one line. Please try again on another day.'
	} satisfies Record<CapacityRefusalCode, string>
};
