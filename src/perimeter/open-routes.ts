/**
 * Routes that anyone may open. Every other route, also one that is added tomorrow and forgotten
 * here, stands behind the screening gate. None of these shows or computes a personal effort number.
 */
export const openRoutes: ReadonlySet<string> = new Set([
	'/',
	'/account',
	'/account/export',
	'/account/gone',
	'/api/auth/[...all]',
	'/coach/forgot',
	'/coach/gone',
	'/coach/invited/[token]',
	'/coach/reset',
	'/coach/sign-in',
	'/coach/sign-up',
	'/demo',
	'/emergency-number',
	'/help',
	'/join/[token]',
	'/learn',
	'/learn/one-breath',
	'/learn/scale',
	'/learn/talk',
	'/learn/teach',
	'/link',
	'/manifest.webmanifest',
	'/methods',
	'/methods/by-hand',
	'/methods/checks',
	'/methods/formulas',
	'/offline',
	'/past',
	'/past/[run]',
	'/privacy',
	'/prompter',
	'/prompter/entries',
	'/safety',
	'/safety/health',
	'/safety/outing',
	'/safety/weather',
	'/screening',
	'/screening/advice',
	'/screening/change',
	'/screening/changed',
	'/screening/check',
	'/screening/consent',
	'/screening/doctor',
	'/screening/emergency',
	'/screening/questions/[n]',
	'/screening/result',
	'/screening/well',
	'/tablet/[group]',
	'/tablet/[group]/done'
]);

/**
 * The coach's desk. It stands behind a coach's sign-in instead of the screening gate, for a coach
 * has no result of their own; what it shows of a runner asks that runner's gate.
 */
export const isDesk = (route: string): boolean => route === '/coach' || route.startsWith('/coach/');
