import { plusDays } from '../days.ts';
import { programmeDays, programmeWishes, secondDay } from './programme-wishes.ts';
import { decides, desk, everyCoach, leads, rule, type Ids, type Walls } from './wall.ts';

const group = {
	name: 'Another name',
	timeZone: 'UTC',
	units: 'mph',
	paceUnits: 'min/mile',
	emergencyNumber: '999'
};
const phase = { phase: 'brisk-walk' };
const band = { ...phase, lowPercent: 42, highPercent: 52, effortLow: 4, effortHigh: 5 };
const outing = {
	name: 'Another',
	revision: 1,
	'parts-0-kind': 'brisk-walk',
	'parts-0-seconds': '12:00'
};
const sure = () => ({ sure: 'yes' });
const oneDay = () => ({ from: secondDay(), until: secondDay(), revision: 1 });
const onePlan = ({ plan }: Ids) => ({ id: plan });

/** What the host of the house alone decides. */
const ofHost = rule(['host'], 'door', { ...everyCoach('404'), host: 'done' });

/** The coach's desk: a group's pages are there for its coaches, and for nobody else. */
export const deskWalls: Walls = {
	'/coach': { page: desk({ toldTo: ['helper'] }) },
	'/coach/new': { page: desk(), '?/default': desk({ sends: () => group }) },

	'/coach/account': {
		// The host sees to whom the house could be handed over.
		page: desk({ toldTo: ['host'] }),
		'?/about': desk({ sends: () => ({ name: 'Somebody', qualification: '' }) }),
		// Nobody here types the right word: it changes nothing.
		'?/password': desk({
			sends: () => ({ current: 'not this one', password: 'two grey herons' }),
			but: everyCoach('400'),
			toldTo: ['host']
		}),
		'?/signOutDevice': desk({
			sends: ({ coachSession }) => ({ id: coachSession }),
			but: { helper: '404', otherCoach: '404', host: '404' }
		}),
		// Each has one session, and so no other.
		'?/signOutOthers': desk({ but: everyCoach('in vain') }),
		'?/removePasskey': desk({
			sends: ({ coachPasskey }) => ({ id: coachPasskey }),
			but: { helper: '404', otherCoach: '404', host: '404' }
		}),
		'?/signUp': ofHost({ sends: () => ({ signUp: 'open' }) }),
		'?/invite': ofHost(),
		'?/revokeInvitation': ofHost({ sends: ({ houseLink }) => ({ id: houseLink }) }),
		'?/handOver': ofHost({ sends: ({ helper }) => ({ id: helper }) }),
		'?/signOut': desk(),
		'?/delete': rule(['helper'], 'door', {
			...everyCoach('to /coach/account#delete'),
			helper: 'done'
		})({ sends: sure })
	},

	'/coach/[group]': {
		page: leads(),
		'?/find': leads({ sends: () => ({ name: 'i' }), onlyReads: true }),
		'?/mark': leads({ sends: ({ member }) => ({ member, here: 'yes' }) }),
		'?/add': leads({ sends: () => ({ name: 'Somebody new' }) }),
		'?/heat': leads({ sends: ({ today }) => ({ onDate: today, hot: 'yes' }) }),
		// One is on already.
		'?/start': leads({ onlyReads: true }),
		'?/end': leads()
	},
	'/coach/[group]/attendance': {
		page: leads({ query: ({ today }) => `?on=${today}` }),
		'?/mark': leads({ sends: ({ member }) => ({ member, here: 'yes' }) })
	},
	'/coach/[group]/contact/[member]': { page: leads() },
	'/coach/[group]/export.csv': { GET: decides() },
	'/coach/[group]/export.json': { GET: decides() },
	'/coach/[group]/import': {
		page: leads(),
		'?/look': leads({ sends: () => ({ text: 'Somebody new' }), onlyReads: true }),
		'?/add': leads({ sends: () => ({ text: 'Somebody new' }) })
	},
	'/coach/[group]/invite': {
		page: leads(),
		'?/make': decides({ sends: ({ today }) => ({ endsOn: today }) }),
		'?/revoke': decides({ sends: ({ link }) => ({ id: link }) }),
		// The coach is signed out of a tablet that goes round.
		'?/tablet': leads()
	},
	'/coach/[group]/settings': {
		page: leads(),
		'?/change': decides({ sends: () => group }),
		'?/delete': decides({ sends: sure }),
		'?/role': decides({ sends: ({ helper }) => ({ id: helper, role: 'owner' }) }),
		'?/dismiss': decides({ sends: ({ helper }) => ({ id: helper }) }),
		'?/leave': leads({ but: { owner: '400' } }),
		'?/inviteCoach': decides(),
		'?/revokeCoach': decides({ sends: ({ coachLink }) => ({ id: coachLink }) })
	},

	'/coach/[group]/members/[member]': {
		page: leads(),
		'?/rename': leads({ sends: () => ({ name: 'Somebody else' }) }),
		'?/step': leads({ sends: ({ programme }) => ({ programme, to: 2, changes: 0 }) }),
		'?/remove': decides({ sends: sure })
	},
	'/coach/[group]/members/[member]/bands': {
		page: leads(),
		'?/set': leads({ sends: () => band }),
		'?/usual': leads({ sends: () => phase }),
		'?/back': leads({ sends: () => phase }),
		'?/seen': leads({ sends: ({ doubt }) => ({ doubt }) }),
		// The owner has confirmed it already.
		'?/confirm': leads({ sends: ({ advice }) => ({ advice }), onlyReads: true }),
		'?/unconfirm': leads({ sends: ({ advice }) => ({ advice }) })
	},

	'/coach/[group]/bands': {
		page: leads({ query: () => '?part=brisk-walk' }),
		'?/set': leads({ sends: () => band }),
		'?/usual': leads({ sends: () => phase }),
		'?/back': leads({ sends: () => phase })
	},
	'/coach/[group]/print': { page: leads() },
	'/coach/[group]/cards': { page: leads() },
	'/coach/[group]/wall': { page: leads() },
	'/coach/[group]/stop-signs': { page: leads() },
	'/coach/[group]/cues': { page: leads() },

	'/coach/[group]/outings': {
		page: leads(),
		'?/make': leads(),
		'?/copy': leads({ sends: onePlan }),
		'?/remove': leads({ sends: onePlan }),
		'?/putBack': leads({ sends: ({ removedPlan }) => ({ id: removedPlan }) })
	},
	'/coach/[group]/outings/[outing]': {
		page: leads(),
		'?/save': leads({ sends: () => outing }),
		'?/press': leads({ sends: () => ({ ...outing, press: 'remove 0' }), onlyReads: true }),
		'?/draw': leads({ sends: ({ member }) => ({ ...outing, runner: member }), onlyReads: true }),
		'?/keepBoth': leads({ sends: () => outing }),
		'?/bringBack': leads({ sends: () => ({ id: '1' }) }),
		// The day before is one of the programme's, or may be.
		'?/plan': leads({ sends: ({ today }) => ({ onDate: plusDays(today, 1) }) })
	},

	'/coach/[group]/programme': {
		page: leads(),
		'?/say': leads({ sends: ({ planned }) => ({ id: planned, was: 'planned', state: 'done' }) }),
		// Nothing is over of which nobody has said anything.
		'?/allDone': leads({ but: { owner: 'in vain', helper: 'in vain' } }),
		'?/heat': leads({ sends: ({ today }) => ({ onDate: plusDays(today, 1), hot: 'yes' }) }),
		'?/takeOff': decides({ sends: oneDay }),
		'?/putBack': decides({ sends: oneDay }),
		'?/days': decides({ sends: () => ({ revision: 1, weekdays: programmeDays() }) }),
		'?/plan': leads({ sends: ({ plan, today }) => ({ id: plan, onDate: plusDays(today, 1) }) }),
		// Only an outing by itself is taken off its day.
		'?/unplan': leads({
			sends: ({ planned }) => ({ id: planned }),
			but: { owner: 'in vain', helper: 'in vain' }
		})
	},
	'/coach/[group]/programme/new': {
		page: decides(),
		'?/look': decides({ sends: () => programmeWishes(), onlyReads: true }),
		'?/keep': decides({
			sends: ({ programme }) => ({
				...programmeWishes(),
				seen: `${programme} 1`,
				replace: 'yes'
			})
		})
	}
};
