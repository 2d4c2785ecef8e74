import { expect, it } from 'vitest';
import { adviceViews } from '../../src/routes/coach/[group]/members/[member]/bands/advice-view.ts';

// Our own rules, no source.

const written = (id: string, givenOn: string, scope: 'walk' | 'walkrun') => ({
	id,
	givenOn,
	scope,
	confirmedBy: []
});

it('tells two of one day and scope apart by their place, and leaves what stands alone without one', () => {
	const places = adviceViews(
		[
			written('b', '2026-11-02', 'walk'),
			written('c', '2026-11-02', 'walkrun'),
			written('a', '2026-11-02', 'walk'),
			written('d', '2026-11-01', 'walk')
		],
		'Europe/Dublin'
	).map(({ id, place }) => [id, place]);
	expect(places).toEqual([
		['b', { nth: 1, of: 2 }],
		['c', null],
		['a', { nth: 2, of: 2 }],
		['d', null]
	]);
});
