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
	'/emergency-number',
	'/link',
	'/methods',
	'/offline',
	'/privacy',
	'/safety',
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
	'/screening/well'
]);
