export const site = {
	name: 'Breathmark',
	skip: 'Skip to the page',
	nav: {
		label: 'Main',
		questions: 'First questions',
		result: 'Result',
		bands: 'Bands',
		account: 'Account'
	},
	footer: {
		label: 'About this app',
		safety: 'Signs to stop',
		learn: 'Learn the feel',
		privacy: 'Privacy',
		methods: 'Where the numbers come from',
		link: 'Use on another phone',
		help: 'When you are stuck',
		notMedical:
			'Breathmark is not a medical check. The question set is a draft that no clinician has reviewed yet.'
	},
	print: 'Print this page',
	back: 'Back',
	summaryTitle: 'Please look at this again',
	/** One issue where several fields have one: its field, then what to change. */
	issueOf: (label: string, text: string) =>
		label.endsWith('?') ? `${label} ${text}` : `${label}: ${text}`
};
