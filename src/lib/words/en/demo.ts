import { programme } from './programme.ts';

const coach = 'Odile Marr';
const runners = {
	dagny: 'Dagny',
	gwen: 'Gwen',
	ines: 'Ines',
	'mei-lin': 'Mei-Lin',
	pavel: 'Pavel',
	rashid: 'Rashid',
	tobias: 'Tobias'
} as const;

/** What stands in the rows of the made-up group. */
export const lanternStreet = {
	group: {
		name: 'Lantern Street beginners',
		usualPlace: 'Canal path, Lantern Street end',
		meetingPoint: 'Lantern Street bridge, by the old lock',
		defibrillator: 'Boat house, wall left of the door, open until nine in the evening',
		firstAider: 'Odile Marr'
	},
	coach: { name: coach, qualification: 'Run leader, level 2 (made up)' },
	runners,
	contacts: [
		{ of: 'dagny', name: 'Lars (made up)', relation: 'son' },
		{ of: 'ines', name: 'Marta (made up)', relation: 'sister' },
		{ of: 'rashid', name: 'Huda (made up)', relation: 'wife' },
		{ of: 'tobias', name: 'Ruth (made up)', relation: 'neighbour' }
	],
	/** As in any programme, so that a day keeps its name when the days are worked out again. */
	outingName: programme.outingName,
	library: {
		withRuns: 'To the lock and back: 1 min 20 s',
		walking: 'Wet evening: walking under the bridges',
		longCue: 'The long one, as far as the lock'
	},
	bandNote: {
		toRunner: 'We keep your runs easy for now. If you can tell me a story, it is right.',
		inner: 'Goes off too fast when Pavel is beside her.'
	}
} as const;

/** The line on top of every page while the made-up group is here. */
export const demoLine = {
	label: 'Made-up group',
	text: 'All of this is made up. Nobody here is real.',
	as: (name: string) => `You look as ${name}.`,
	tour: 'Look around',
	back: `Back to ${coach}`,
	paper: 'Made up. Nobody on this sheet is real.'
};

/** On the start page. */
export const demoStart = {
	title: 'Nobody is here yet',
	text: 'You can look around first. One press brings in a coach and seven runners, all of them made up. One press takes them away again.',
	load: 'Look around with a made-up group',
	go: 'Go on looking around',
	goText: 'The made-up group is here. Nobody real can begin until it is removed.'
};

export const demo = {
	title: 'Look around',
	emptyLead:
		'Nobody is here yet. You can bring in Lantern Street beginners: a coach and seven runners, all of them made up, with four weeks behind them.',
	emptySafe:
		'While they are here, nobody real can answer the questions, join or sign up. One press takes them away, with everything that you did in between.',
	load: 'Look around with a made-up group',
	lead: 'This is Lantern Street beginners: a coach and seven runners. All of them are made up, and so is all that they did.',
	leadPlay:
		'Press what you like: nothing can break. Do not type anything true about yourself or somebody else.',
	only: 'That page is for real people. Nobody real can begin while the made-up group is here: no questions, no joining, no sign-up. Remove the group first.',
	loading:
		'The group is not whole yet. Wait a moment and open this page again. If nothing changes, remove it and bring it in once more.',
	tourTitle: 'In a minute',
	/** A look at one page: as whom, and what to see there. All of it is read aloud in a minute. */
	steps: {
		roster: {
			title: 'Who may run today',
			text: 'Odile’s list: one word for each runner, its last day, and never a reason.'
		},
		'ask-first': {
			title: 'Somebody who asks first',
			text: 'Only Gwen reads why, who can lift it, and what to show a doctor.'
		},
		bands: {
			title: 'Mei-Lin’s own bands',
			text: 'For each part a line to say aloud, how it feels, and a pulse with its doubt.'
		},
		'side-by-side': {
			title: 'Everybody side by side',
			text: 'Other beats, the same feeling. Rashid’s medicine makes a pulse wrong, so he runs by talk.'
		},
		picture: {
			title: 'The picture of an outing',
			text: 'Change a run, and see what the pulses will do.'
		},
		programme: {
			title: 'Sixteen weeks',
			text: 'From walking to half an hour. Take a day off, and the rest moves by rule.'
		},
		prompter: {
			title: 'The prompter',
			text: 'It leads Mei-Lin by sound and voice, also without a network.'
		},
		past: {
			title: 'What was done',
			text: 'Her past outings: talk, effort, pulse and pain, hers to delete.'
		}
	} as Readonly<Record<string, { readonly title: string; readonly text: string }>>,
	/** While the tour is on, on top of each page. */
	onTour: {
		label: 'The tour',
		place: (n: number, of: number) => `${n} of ${of}`,
		next: (title: string) => `Next: ${title}`,
		goOn: 'Go on with the tour',
		end: 'End of the tour'
	},
	peopleTitle: 'See it as one of them',
	people: {
		odile: 'Coach. Sees words, never reasons.',
		dagny: '72. Wants to walk, and walks.',
		gwen: '51. Told us about a sign, and asks a doctor first.',
		ines: '46. New to exercise. Her doctor said yes, so she may run.',
		'mei-lin': '29. Walks a lot, has never run. May run.',
		pavel: '37. May run. His result ends nine days after the group came in.',
		rashid: '58. Takes a medicine. May run, by talk.',
		tobias: '64. May walk, until somebody gives advice on running.'
	} as Readonly<Record<string, string>>,
	seeAs: (name: string) => `See it as ${name}`,
	now: 'You look as this one now.',
	removeTitle: 'Take it all away',
	removeText: 'The coach, the runners and everything that was done here are deleted for good.',
	remove: 'Remove the made-up group',
	removeByHost:
		'Whoever runs this server takes the group away with this command: npm run demo -- remove'
};
