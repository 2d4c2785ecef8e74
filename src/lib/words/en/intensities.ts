import type { Intensity } from '$lib/physiology/intensity-axes.ts';
import { spokenLength } from './outings.ts';

/** The five classes of intensity. */
export const intensityNames = {
	'very-light': 'very light',
	light: 'light',
	moderate: 'moderate',
	vigorous: 'vigorous',
	'near-maximal': 'near-maximal'
} satisfies Record<Intensity, string>;

/** How long the pulse is expected to be in each of them. */
export const intensityLine = (
	times: readonly { readonly name: Intensity; readonly seconds: number }[]
) =>
	`By intensity: ${times.map(({ name, seconds }) => `${intensityNames[name]} ${spokenLength(seconds)}`).join(', ')}.`;
