import type { PainLevel, PainPlace } from '$lib/outing/entry.ts';

/** Pain after an outing and on the next morning. */
export const pain = {
	levels: {
		none: 'No new or growing pain',
		new: 'New pain',
		growing: 'Pain that is growing'
	} satisfies Record<PainLevel, string>,
	places: {
		foot: 'foot',
		ankle: 'ankle',
		shin: 'shin',
		calf: 'calf',
		knee: 'knee',
		thigh: 'thigh',
		hip: 'hip',
		back: 'back',
		elsewhere: 'somewhere else'
	} satisfies Record<PainPlace, string>,
	said: (level: string, place: string | null) => (place === null ? level : `${level} (${place})`),
	where: 'Where?',
	whereOpen: 'I would rather not say',
	stands: {
		title: 'No running until it is gone',
		text: 'You told us about new or growing pain. Walk, if walking does not hurt. If it is not better in a few days, see a physiotherapist or a doctor.',
		more: 'More about pain'
	}
};

export const painGone = {
	box: 'The pain is gone, also when I walk fast',
	go: 'It is gone',
	issue: 'Tick the box first.'
};

/** The question on the morning after. */
export const morning = {
	title: 'How are your legs today?',
	text: (date: string) =>
		`Your last outing was on ${date}. Stiff muscles for a day or two are normal. New pain in a joint, bone or muscle, or pain that grows, is not.`,
	level: 'Is there any pain?',
	go: 'Keep this',
	kept: 'Kept. Thank you.',
	issues: {
		level: 'Pick one of the three.',
		where: 'Pick a place from the list.'
	} as Record<string, string>
};
