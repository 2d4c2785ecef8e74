import { anybody, everyCoach, missing, ownFor, persons, rule, type Walls } from './wall.ts';

/** To everybody the same page, with nothing of anybody in it. */
const page = anybody();
const reads = (sends: Record<string, string | number>) =>
	anybody({ sends: () => sends, onlyReads: true });
const wrong = Object.fromEntries(persons.map((one) => [one, '400'] as const));

const account = {
	name: 'Noor Vail',
	qualification: '',
	email: 'noor@else.example',
	password: 'nine tin whistles'
};

/** Pages that anybody may open. */
export const openWalls: Walls = {
	'/': { page },
	'/account/gone': { page },
	'/coach/gone': { page },
	'/help': { page },
	'/learn': { page },
	'/learn/one-breath': { page },
	'/learn/scale': { page },
	'/learn/talk': { page },
	'/learn/teach': { page },
	'/manifest.webmanifest': { GET: page },
	'/methods': { page },
	'/methods/checks': { page },
	'/methods/formulas': { page },
	'/methods/by-hand': {
		page,
		'?/default': anybody({ sends: () => ({ maximum: 1, reserve: 1, low: 1, high: 1 }), but: wrong })
	},
	'/offline': { page },
	'/privacy': { page },
	'/prompter': { page },
	'/safety': { page },
	'/safety/health': { page },
	'/safety/outing': { page },
	'/safety/weather': { page, '?/default': reads({ wetBulb: 21 }) },
	'/emergency-number': { page, '?/default': anybody({ sends: () => ({ number: '112' }) }) },
	'/link': { page, '?/default': anybody({ sends: () => ({ code: 'AAAA1111' }), but: wrong }) },

	'/screening': { page, '?/answer': anybody({ sends: () => ({ urgent: 'none' }) }) },
	'/screening/consent': {
		page: rule([], 'to /screening', {})(),
		'?/default': rule([], 'to /screening', {})({ sends: () => ({ agree: 'yes' }) })
	},
	'/screening/emergency': {
		page,
		'?/ask': rule([], 'to /screening/emergency', {})(),
		'?/withdraw': rule([], 'to /screening/emergency', {})()
	},
	'/screening/result': {
		page,
		'?/painGone': ownFor('to /screening/result')({ sends: () => ({ gone: 'yes' }) })
	},

	// Whoever holds a link sees whose group it is, and a coach joins nothing.
	'/join/[token]': {
		page: anybody({ toldTo: persons, byLink: true }),
		'?/default': rule(['otherRunner'], 'to /join/[token]', {
			runner: 'to /join/[token]?done',
			otherRunner: 'done'
		})({
			sends: () => ({ name: 'Mei-Lin', agree: 'yes' }),
			toldTo: persons,
			byLink: true
		})
	},
	// No tablet is shared here: the page says so of every group, there or not. tablet-walls.ts asks one
	// that is.
	'/tablet/[group]': {
		page,
		'?/back': missing({ sends: () => ({ code: 'AAAA1111' }) }),
		'?/join': missing(),
		'?/leave': missing({ sends: () => ({ code: 'AAAA1111' }) }),
		'?/clear': missing(),
		'?/off': missing()
	},
	'/tablet/[group]/done': { page },

	'/coach/sign-in': {
		page: anybody({ but: everyCoach('to /coach') }),
		'?/default': anybody({
			sends: () => ({ email: 'odile@lantern.example', password: 'not this one' }),
			but: { ...wrong, ...everyCoach('to /coach') }
		})
	},
	// Who may come is not open at that time: by invitation alone.
	'/coach/sign-up': {
		page: anybody({ but: everyCoach('to /coach') }),
		'?/default': anybody({
			sends: () => ({ ...account, aside: 'yes' }),
			but: {
				nobody: '403',
				runner: '403',
				otherRunner: '403',
				...everyCoach('to /coach')
			}
		})
	},
	'/coach/forgot': { page, '?/default': reads({ email: 'odile@lantern.example' }) },
	'/coach/reset': {
		page: anybody({ query: () => '?token=none' }),
		'?/default': anybody({
			sends: () => ({ token: 'none', password: account.password }),
			but: wrong
		})
	},
	'/coach/invited/[token]': {
		page: anybody({ toldTo: persons, byLink: true }),
		// Whoever holds one is let in.
		'?/accept': rule(persons, 'to /coach/invited/[token]', everyCoach('done'))({ byLink: true }),
		'?/signUp': rule(persons, 'done', {})({ sends: () => ({ ...account, aside: 'yes' }) }),
		'?/signIn': anybody({
			sends: () => ({ email: account.email, password: account.password, aside: 'yes' }),
			but: wrong,
			toldTo: persons,
			byLink: true
		})
	},

	// Beside real people the made-up group is not there.
	'/demo': {
		page: missing(),
		'?/load': missing(),
		'?/look': missing({ sends: () => ({ as: 'odile' }) }),
		'?/remove': missing()
	},
	// The sign-in's own endpoints are listed in tests/server/sign-in-endpoints.test.ts.
	'/api/auth/[...all]': { GET: missing(), POST: missing() }
};
