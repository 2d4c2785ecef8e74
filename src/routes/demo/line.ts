import type { Cookies } from '@sveltejs/kit';
import type { DemoPerson } from '$lib/server/demo/people.ts';
import { demoLine as words, lanternStreet } from '$words/demo.ts';
import { onTour, type OnTour } from './on-tour.ts';

/** What stands on top of every page while the made-up group is here. */
export interface DemoLine {
	readonly label: string;
	/** That all of it is made up: on the screen, and on paper. */
	readonly text: string;
	readonly paper: string;
	/** As whom this browser looks; empty for nobody. */
	readonly as: string;
	readonly look: string;
	/** Back to the coach, for whoever looks as somebody else and is not on the tour. */
	readonly back: string | null;
	readonly tour: OnTour | null;
}

/** Its texts come with the page, so that they weigh on no page of a house with real people. */
export function lineOf(
	as: DemoPerson | null,
	cookies: Pick<Cookies, 'get'>,
	route: string | null
): DemoLine {
	const tour = onTour(cookies, route);
	return {
		label: words.label,
		text: words.text,
		paper: words.paper,
		as: as === null ? '' : words.as(nameOf(as)),
		look: words.tour,
		back: as === null || as === 'odile' || tour ? null : words.back,
		tour
	};
}

const nameOf = (person: DemoPerson): string =>
	person === 'odile' ? lanternStreet.coach.name : lanternStreet.runners[person];
