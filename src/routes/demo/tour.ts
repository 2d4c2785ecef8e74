import type { DemoPerson } from '$lib/server/demo/people.ts';

/** One look: as whom, and at which page. */
export interface Step {
	readonly id: string;
	readonly as: DemoPerson;
	readonly path: (groupPath: string) => string;
}

/** The tour, in its order. */
export const tour: readonly Step[] = [
	{ id: 'roster', as: 'odile', path: (group) => group },
	{ id: 'ask-first', as: 'gwen', path: () => '/screening/result' },
	{ id: 'side-by-side', as: 'odile', path: (group) => `${group}/bands` },
	{ id: 'bands', as: 'mei-lin', path: () => '/bands' },
	{ id: 'by-talk', as: 'rashid', path: () => '/bands' }
];
