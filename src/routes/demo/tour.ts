import type { DemoPerson } from '$lib/server/demo/people.ts';
import type { DemoPlaces } from '$lib/server/demo/places.ts';

/** One look: as whom, and at which page. */
export interface Step {
	readonly id: string;
	readonly as: DemoPerson;
	/** The page, as the framework names it. */
	readonly route: string;
	readonly path: (places: DemoPlaces) => string;
}

/** The tour, in its order: from who may run to what was done. */
export const tour: readonly Step[] = [
	{ id: 'roster', as: 'odile', route: '/coach/[group]', path: ({ group }) => group },
	own('ask-first', 'gwen', '/screening/result'),
	own('bands', 'mei-lin', '/bands'),
	desk('side-by-side', 'bands'),
	{
		id: 'picture',
		as: 'odile',
		route: '/coach/[group]/outings/[outing]',
		path: ({ outing }) => outing
	},
	desk('programme', 'programme'),
	own('prompter', 'mei-lin', '/prompter'),
	own('past', 'mei-lin', '/past')
];

function own(id: string, as: DemoPerson, route: string): Step {
	return { id, as, route, path: () => route };
}

function desk(id: string, page: string): Step {
	return {
		id,
		as: 'odile',
		route: `/coach/[group]/${page}`,
		path: ({ group }) => `${group}/${page}`
	};
}
