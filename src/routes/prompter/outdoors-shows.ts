import { keepHere, keptHere } from '$lib/device/on-this-phone.ts';

/** Outdoors: the time that a kilometre or a mile takes, or how many pass in an hour. */
export const outdoorsShown = ['pace', 'speed'] as const;
export type OutdoorsShown = (typeof outdoorsShown)[number];

const NAME = 'outdoors-shows';

/** A pace for whoever has not chosen: it is what is said of going outdoors. */
export const shownOutdoors = (): OutdoorsShown => (keptHere(NAME) === 'speed' ? 'speed' : 'pace');

export const keepShownOutdoors = (shown: OutdoorsShown) => keepHere(NAME, shown);
