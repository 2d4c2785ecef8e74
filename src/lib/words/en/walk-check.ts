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
		'In the last 15 seconds read your pulse from a strap. Without one, count 15 seconds while you walk on, times four.',
		'Do the same at the second and the third speed. Then walk slowly for six minutes.'
	],
	walk: (nth: number) => `Walk ${nth}`,
	speed: (nth: number, unit: string) => `Speed of walk ${nth} (${unit})`,
	pulse: (nth: number) => `Pulse at the end of walk ${nth} (beats a minute)`,
	pulseHint: 'For a full minute: a count of 15 seconds, times four.',
	save: 'Work it out',
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
		'too-high': 'That is higher than we can believe, or faster than people walk.'
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
