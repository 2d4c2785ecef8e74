/* What the head of every page says, apart from the rest: every page with script carries it. */

/** The head of the coach's desk. */
export const desk = {
	label: 'Coach',
	groups: 'Groups',
	runners: 'Runners',
	bands: 'Bands',
	outings: 'Outings',
	programme: 'Programme',
	print: 'Print',
	settings: 'Group',
	madeUp: 'This group is made up. Nobody in it is real.'
};

/** On top of every page of a tablet that goes round. */
export const tabletStrip = {
	title: 'Shared tablet',
	text: (group: string) => `Shared tablet of ${group}. One person at a time.`,
	clear: 'Clear it for the next person'
};

/** The people of the made-up group. */
export const madeUpCoach = 'Odile Marr';
export const madeUpRunners = {
	dagny: 'Dagny',
	gwen: 'Gwen',
	ines: 'Ines',
	'mei-lin': 'Mei-Lin',
	pavel: 'Pavel',
	rashid: 'Rashid',
	tobias: 'Tobias'
} as const;

/** The line on top of every page while the made-up group is here. */
export const demoLine = {
	label: 'Made-up group',
	text: 'All of this is made up. Nobody here is real.',
	as: (name: string) => `You look as ${name}.`,
	tour: 'Look around',
	back: (name: string) => `Back to ${name}`,
	paper: 'Made up. Nobody on this sheet is real.'
};
