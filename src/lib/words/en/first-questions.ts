export const firstQuestions = {
	title: 'First questions',
	position: (n: number, of: number) => `${n} of ${of}`,
	notMedical:
		'This is not a medical check. It cannot find illness. If you are worried, ask a doctor, whatever the result says.',
	whyWeAsk: 'Why we ask.',
	back: 'Back',
	next: 'Next question',
	toCheck: 'Check your answers',
	save: 'Keep this answer',
	privacy: 'No page shows your answers to anybody else, a coach included.',
	years: 'years',
	resumed: 'We kept your place. Your answers are kept for 7 days from the day you began.',
	ends: 'You have a result already. It ends when you answer the next question; then finish the form to get a new one.',
	urgentAgain: 'It has been a while, so we ask the urgent question again.'
};

export const consent = {
	title: 'Before you answer',
	lead: 'Please read this first. It takes a minute.',
	points: [
		'This is not a medical check. It cannot find illness. If you are worried, ask a doctor, whatever the result says.',
		'The questions were written for this app. Their topics follow published guidance. They are not the form of any organisation, and nobody has endorsed them.',
		'The set is a draft. No clinician has reviewed it yet.',
		'We ask about 22 things, one a page. You can stop at any time. Local rules, your insurance and licensed practice come first.'
	],
	keepTitle: 'What is kept',
	keep: [
		'Your answers are kept, locked with a key, only until you finish: at most 7 days. Then they are deleted.',
		'The result stays: what you may do, the reasons, your age, your plan and how active you are. It is stored encrypted. Whoever runs this server could read it.',
		'No page shows your answers to a coach.',
		'You can see, take with you and delete everything on the account page.'
	],
	wayOutTitle: 'You do not have to',
	wayOut:
		'Nobody has to use this form. If you would rather not, talk with your coach about another way, or with a doctor.',
	box: 'I agree that this app may use my health answers to work out what I may do. I can take this back at any time.',
	boxIssue: 'Tick the box if you agree. Without it we cannot ask the questions.',
	go: 'Start the questions',
	no: 'I would rather not'
};

export const check = {
	title: 'Check your answers',
	lead: 'Read them once more. You can change each one.',
	change: 'Change',
	changeOf: (question: string) => `Change: ${question}`,
	none: 'Not answered yet',
	missingTitle: 'A few answers are missing',
	conflictTitle: 'Two answers do not fit together',
	truth: 'My answers are true as far as I know. I will answer again if my health changes.',
	truthIssue: 'Tick the box to say that your answers are true.',
	submit: 'See my result',
	afterwards: 'Your answers are deleted when you press this. The result stays.',
	gone: 'This form was already finished, or is older than 7 days.'
};

export const looser = {
	title: 'What changed?',
	text: 'In the last 24 hours your answers gave a stricter result. That is fine if something is different. Please tell us which.',
	choices: {
		mistake: 'I made a mistake the first time',
		health: 'My health is different now',
		advice: 'A doctor or another professional gave me advice',
		plan: 'I changed what I plan to do',
		other: 'Something else'
	} as Record<string, string>,
	note: 'Ask yourself once more: is each answer true? A stricter answer only means that the right person should look first.',
	issue: 'Pick what changed.',
	go: 'Go on to my result',
	back: 'Back to my answers'
};
