import { gated, herOwn, ownFor, rule, type Ids, type Walls } from './wall.ts';

const sure = () => ({ sure: 'yes' });
const outing = {
	name: 'Another',
	revision: 1,
	'parts-0-kind': 'brisk-walk',
	'parts-0-seconds': '12:00'
};
const onePlan = ({ ownPlan }: Ids) => ({ id: ownPlan });
const oneGroup = ({ member }: Ids) => ({ membership: member });

const noAccount = ownFor('to /account');
/** One row of Ines's, from a page that everybody has. */
const oneOfHers = rule(['runner'], 'to /account', { runner: 'done', otherRunner: '404' });
const oneOuting = rule(['runner'], '404', { runner: 'done' });
const resultPage = ownFor('to /screening/result');
/** Nobody here is answering: each is led to where the questions begin. */
const questions = rule([], 'to /screening', {});
const finished = rule([], 'to /screening', {
	runner: 'to /screening/result',
	otherRunner: 'to /screening/result'
});

/** A runner's own pages. Coaches have none of them, and nobody has somebody else's. */
export const runnerWalls: Walls = {
	'/account': {
		page: noAccount({
			but: { nobody: 'done', owner: 'done', helper: 'done', otherCoach: 'done', host: 'done' }
		}),
		'?/settings': noAccount({ sends: () => ({ theme: 'dark', timeZone: 'Europe/Oslo' }) }),
		'?/code': noAccount(),
		'?/removePasskey': noAccount({
			sends: ({ passkey }) => ({ id: passkey }),
			but: { otherRunner: '404' }
		}),
		'?/withdraw': noAccount(),
		'?/delete': noAccount({ sends: sure }),
		'?/signOut': noAccount(),
		'?/leaveGroup': oneOfHers({ sends: oneGroup }),
		'?/share': oneOfHers({ sends: oneGroup }),
		'?/stopSharing': oneOfHers({ sends: oneGroup }),
		'?/contact': noAccount({
			sends: () => ({ contactName: 'Wim Roe', contactPhone: '+353871112233' })
		}),
		'?/removeContact': noAccount()
	},
	'/account/export': { GET: ownFor('404')() },

	'/bands': {
		page: gated(),
		// She has said so today.
		'?/walked': gated({ onlyReads: true }),
		'?/notWalked': gated({ sends: ({ today }) => ({ on: today }) }),
		'?/doubt': gated({ sends: () => ({ phase: 'brisk-walk', feels: 'too-easy' }) })
	},
	'/bands/about-you': {
		page: gated(),
		'?/default': gated({
			sends: () => ({ name: 'Nell', sex: 'none', speedUnits: 'mph', paceUnits: 'min/mile' })
		})
	},
	'/bands/card': { page: gated() },
	'/bands/resting-pulse': {
		page: gated(),
		'?/add': gated({ sends: ({ today }) => ({ beats: 61, seconds: 60, on: today }) }),
		'?/remove': gated({ sends: ({ today }) => ({ on: today }) })
	},
	'/bands/mile-walk': {
		page: gated(),
		// Ines may not do hard effort yet: it leads to the page that says so.
		'?/add': gated({
			onlyReads: true,
			sends: () => ({
				weight: 70,
				weightUnit: 'kg',
				sex: 'none',
				time: '15:00',
				read: 'minute',
				pulse: 130
			})
		}),
		'?/remove': gated()
	},
	'/bands/walk-check': {
		page: gated(),
		'?/add': gated({
			sends: () => ({
				read: 'minute',
				speed1: 3,
				pulse1: 88,
				speed2: 4.5,
				pulse2: 101,
				speed3: 6,
				pulse3: 120
			})
		}),
		'?/remove': gated()
	},

	'/learn/edge': {
		page: gated(),
		'?/answer': gated({
			sends: () => ({ stretch: 0, talk: 'comfortable', effort: 4 }),
			onlyReads: true
		})
	},
	'/learn/guess': {
		page: gated(),
		'?/guess': gated({ sends: () => ({ phase: 'brisk-walk', effort: 4, pulse: 111 }) }),
		'?/look': gated({ sends: () => ({ talk: 'comfortable', method: 'device', beats: 115 }) }),
		'?/drop': gated(),
		'?/remove': gated({ sends: ({ guess }) => ({ id: guess }), but: { otherRunner: '404' } }),
		'?/removeAll': gated()
	},
	'/learn/talk/moving': { page: gated() },
	'/learn/one-breath/moving': {
		page: gated(),
		'?/default': gated({ sends: () => ({ rest: 20, moving: 9 }), onlyReads: true })
	},

	'/outings': {
		page: gated(),
		'?/make': gated(),
		'?/copy': herOwn({ sends: onePlan }),
		'?/remove': herOwn({ sends: onePlan }),
		'?/putBack': herOwn({ sends: ({ ownRemovedPlan }) => ({ id: ownRemovedPlan }) })
	},
	'/outings/[outing]': {
		page: herOwn(),
		'?/save': herOwn({ sends: () => outing }),
		'?/press': herOwn({ sends: () => ({ ...outing, press: 'remove 0' }), onlyReads: true }),
		'?/keepBoth': herOwn({ sends: () => outing }),
		'?/bringBack': herOwn({ sends: () => ({ id: '1' }) })
	},
	// Everybody has the page; what stands on it is one's own.
	'/past': {
		page: ownFor('done')(),
		'?/morning': rule(['runner'], 'to /past', { runner: 'done', otherRunner: '404' })({
			sends: ({ pastRun }) => ({ run: pastRun, level: 'none', where: '' })
		}),
		'?/gone': ownFor('to /past')({ sends: () => ({ gone: 'yes' }) })
	},
	'/past/progress': { page: gated() },
	'/past/[run]': {
		page: oneOuting(),
		'?/remove': oneOuting({ sends: sure })
	},
	'/methods/yours': { page: gated() },
	'/prompter/kept': { GET: gated() },
	'/prompter/strap': { page: gated() },
	'/prompter/entries': { POST: ownFor('404')({ as: 'json', onlyReads: true }) },

	'/screening/advice': {
		page: resultPage(),
		'?/record': resultPage({
			sends: ({ today }) => ({
				givenOn: today,
				role: 'doctor',
				covers: 'R-SIGN-ANKLES',
				scope: 'walk',
				limitBpm: ''
			}),
			// Nothing of hers is there to be covered.
			but: { otherRunner: '400' }
		}),
		'?/remove': rule(['runner'], 'to /screening/result', { runner: 'done', otherRunner: '404' })({
			sends: ({ advice }) => ({ id: advice })
		})
	},
	'/screening/change': {
		page: resultPage(),
		// Whoever has no result begins with the questions, too.
		'?/default': ownFor('to /screening')()
	},
	'/screening/doctor': { page: resultPage() },
	// Nobody here waits for an illness to pass.
	'/screening/well': {
		page: resultPage({
			but: { runner: 'to /screening/result', otherRunner: 'to /screening/result' }
		}),
		'?/default': resultPage({ sends: () => ({ feelWell: 'yes', signs: 'no' }), onlyReads: true })
	},
	'/screening/questions/[n]': {
		page: questions(),
		'?/default': questions({ sends: () => ({ question: 'age.years', answer: 41 }) })
	},
	'/screening/check': {
		page: questions(),
		'?/default': finished({ sends: () => ({ truth: 'yes' }) })
	},
	'/screening/changed': {
		page: questions(),
		'?/default': finished({ sends: () => ({ why: 'mistake' }) })
	}
};
