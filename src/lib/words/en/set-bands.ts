/** What a runner reads where a coach had a hand in a band. */
export const setBands = {
	by: {
		coach: (date: string) => `Set with your coach on ${date}`,
		group: (date: string) => `Set for your whole group on ${date}`
	},
	of: (groups: string) => `in ${groups}`,
	and: (groups: readonly string[]) => groups.join(' and '),
	note: (from: string) => `${from} wrote`,
	groupsDiffer: 'Your groups set different bands. The gentler one counts.',
	isCut: 'Your result allows a little less than was set, so it ends where your result ends.',
	doubt: {
		open: 'This feels wrong',
		legend: 'How does it feel?',
		hint: 'Your coach sees this and the part it is about, nothing else. Until you have talked, go by what you can say, and rather easier.',
		feels: {
			'too-hard': 'Too hard',
			'too-easy': 'Too easy',
			other: 'Something else, I will tell them'
		} as Record<string, string>,
		send: 'Tell my coach',
		unwell: 'If you feel unwell, stop.',
		signs: 'Signs to stop',
		said: (date: string, feels: string) =>
			`You told your coach on ${date}: ${feels.toLowerCase()}.`,
		seen: (date: string) => `Seen on ${date}.`,
		notSeen: 'Not seen yet.',
		issues: {
			missing: 'Pick one.',
			'unknown-option': 'Pick one of the choices.'
		} as Record<string, string>
	}
};
