import { routes } from './routes.ts';

/**
 * On which walk (`stops.ts`, `desk-stops.ts`) each page is looked at, with axe, by keys and by ear.
 * A page without a line here, and a line whose walk does not come by, fails.
 */
export const lookedAt: Readonly<Record<string, string>> = {
	'/': 'before anything is stored',
	'/privacy': 'before anything is stored',
	'/help': 'before anything is stored',
	'/offline': 'before anything is stored',
	'/safety': 'before anything is stored',
	'/safety/weather': 'before anything is stored',
	'/safety/outing': 'before anything is stored',
	'/safety/health': 'before anything is stored',
	'/methods': 'before anything is stored',
	'/methods/formulas': 'before anything is stored',
	'/methods/checks': 'before anything is stored',
	'/methods/by-hand': 'before anything is stored',
	'/learn': 'before anything is stored',
	'/learn/scale': 'before anything is stored',
	'/learn/one-breath': 'before anything is stored',
	'/learn/teach': 'before anything is stored',
	'/learn/talk': 'before anything is stored',
	'/account/gone': 'before anything is stored',
	'/link': 'before anything is stored',
	'/emergency-number': 'before anything is stored',
	'/screening': 'the urgent question and the consent',
	'/screening/consent': 'the urgent question and the consent',
	'/screening/emergency': 'the urgent question and the consent',
	'/screening/questions/[n]': 'the questions',
	'/screening/check': 'the questions',
	'/screening/result': 'the result: mayRun',
	'/screening/changed': 'under eighteen, ended and changed',
	'/screening/change': 'under eighteen, ended and changed',
	'/screening/doctor': 'a doctor asked',
	'/screening/advice': 'a doctor asked',
	'/screening/well': 'ill today',
	'/bands': 'the result: mayRun',
	'/methods/yours': 'the result: mayRun',
	'/bands/card': 'cards, and outings of one’s own',
	'/outings': 'cards, and outings of one’s own',
	'/outings/[outing]': 'cards, and outings of one’s own',
	'/learn/edge': 'lessons that ask for effort',
	'/learn/talk/moving': 'lessons that ask for effort',
	'/learn/guess': 'lessons that ask for effort',
	'/learn/one-breath/moving': 'lessons that ask for effort',
	'/past': 'past outings, and the morning after',
	'/past/progress': 'past outings, and the morning after',
	'/past/[run]': 'past outings, and the morning after',
	'/prompter': 'an outing in the hand',
	'/bands/about-you': 'about you, the resting pulse and the account',
	'/bands/walk-check': 'about you, the resting pulse and the account',
	'/bands/mile-walk': 'about you, the resting pulse and the account',
	'/bands/resting-pulse': 'about you, the resting pulse and the account',
	'/prompter/strap': 'about you, the resting pulse and the account',
	'/account': 'about you, the resting pulse and the account',
	'/coach': 'the desk: accounts',
	'/coach/new': 'the desk: accounts',
	'/coach/account': 'the desk: accounts',
	'/coach/sign-up': 'the desk: accounts',
	'/coach/sign-in': 'the desk: accounts',
	'/coach/forgot': 'the desk: accounts',
	'/coach/reset': 'the desk: accounts',
	'/coach/gone': 'the desk: accounts',
	'/coach/invited/[token]': 'the desk: accounts',
	'/coach/[group]/settings': 'the desk: accounts',
	'/coach/[group]': 'the desk: a group of all kinds',
	'/coach/[group]/attendance': 'the desk: a group of all kinds',
	'/coach/[group]/bands': 'the desk: a group of all kinds',
	'/coach/[group]/invite': 'the desk: a group of all kinds',
	'/coach/[group]/print': 'the desk: a group of all kinds',
	'/coach/[group]/cards': 'the desk: a group of all kinds',
	'/coach/[group]/wall': 'the desk: a group of all kinds',
	'/coach/[group]/stop-signs': 'the desk: a group of all kinds',
	'/coach/[group]/cues': 'the desk: a group of all kinds',
	'/coach/[group]/programme': 'the desk: a group of all kinds',
	'/coach/[group]/programme/new': 'the desk: a group of all kinds',
	'/coach/[group]/members/[member]': 'the desk: a group of all kinds',
	'/coach/[group]/members/[member]/bands': 'the desk: a group of all kinds',
	'/coach/[group]/outings': 'the desk: a group of all kinds',
	'/coach/[group]/outings/[outing]': 'the desk: a group of all kinds',
	'/coach/[group]/contact/[member]': 'the desk: a group of all kinds',
	'/coach/[group]/import': 'the desk: names from a list',
	'/join/[token]': 'joining a group',
	'/tablet/[group]': 'a tablet that goes round',
	'/tablet/[group]/done': 'a tablet that goes round',
	'/demo': 'the made-up group'
};

const pages = routes.filter(({ isPage }) => isPage).map(({ id }) => id);

/** Pages without a line, and lines without a page. */
export function withoutWalk(): string[] {
	const listed = Object.keys(lookedAt);
	return [
		...pages.filter((id) => !listed.includes(id)).map((id) => `${id} is on no walk`),
		...listed.filter((id) => !pages.includes(id)).map((id) => `${id} is no page`)
	];
}

/** Pages that a walk was to come by, and did not. */
export function missedOn(walk: string, paths: ReadonlySet<string>): string[] {
	const seen = new Set([...paths].map(routeOf));
	return Object.entries(lookedAt)
		.filter(([id, on]) => on === walk && !seen.has(id))
		.map(([id]) => id);
}

/** Which page an address is of: of two that fit, the one with fewer parameters. */
function routeOf(path: string): string | undefined {
	const parts = (id: string) => id.split('[').length;
	return pages
		.filter((id) => new RegExp(`^${id.replaceAll(/\[[^\]]+\]/g, '[^/]+')}$`).test(path))
		.sort((one, other) => parts(one) - parts(other))[0];
}
