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
	clear: 'Clear it for the next person',
	leave: 'Leave the group'
};
