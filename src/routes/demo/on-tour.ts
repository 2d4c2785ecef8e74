import type { Cookies } from '@sveltejs/kit';
import { demo } from '$words/demo.ts';
import { tour } from './tour.ts';

/** The step at which a browser is, nothing else. */
const COOKIE = 'tour';
/** What is sent after the last step. */
export const END = 'end';

/** What the line on top says while somebody is on the tour. */
export interface OnTour {
	/** "3 of 8: Who may run today", or null on a page beside the way. */
	readonly title: string | null;
	readonly text: string;
	/** What the button sends, and what it says. */
	readonly next: string;
	readonly go: string;
}

export function goTo(cookies: Pick<Cookies, 'set'>, step: string, secure: boolean): void {
	cookies.set(COOKIE, step, { path: '/', httpOnly: true, sameSite: 'lax', secure });
}

export function leave(cookies: Pick<Cookies, 'delete'>): void {
	cookies.delete(COOKIE, { path: '/' });
}

/** Null for who is not on the tour. Whoever turns aside from it is only led back. */
export function onTour(cookies: Pick<Cookies, 'get'>, route: string | null): OnTour | null {
	const id = cookies.get(COOKIE);
	const i = tour.findIndex((step) => step.id === id);
	const step = tour[i];
	if (step === undefined || route === '/demo') return null;
	const words = demo.onTour;
	const { title = '', text = '' } = demo.steps[step.id] ?? {};
	if (route !== step.route) return { title: null, text: '', next: step.id, go: words.goOn };
	const after = tour[i + 1];
	return {
		title: `${words.place(i + 1, tour.length)}: ${title}`,
		text,
		next: after?.id ?? END,
		go: after ? words.next(demo.steps[after.id]?.title ?? '') : words.end
	};
}
