export const start = {
	title: 'Start',
	lead: 'Learn what comfortable but working feels like.',
	text: 'Breathmark helps adults who are new to running. It asks who should see a doctor first. Then it works out how hard each part of an outing should feel for you: what you can still say, how it feels, your pulse and your speed.',
	door: 'I am starting to run',
	doorHint: 'About five minutes. No sign-up, no e-mail.',
	coachDoor: 'I coach a group',
	coachHint:
		'You are signed in as a coach. To answer the questions yourself, use another browser: here that signs you out.',
	groups: 'Your groups',
	goOn: 'Go on with the first questions',
	bands: 'Your bands',
	result: 'Your result',
	again: 'Answer the questions again',
	steps: [
		{ title: 'First questions', text: '22 short questions about your health. One a page.' },
		{
			title: 'A plain result',
			text: 'You may run, you may walk, or ask a doctor first. Always with the reason.'
		},
		{
			title: 'Your own bands',
			text: 'For each part of an outing: a line to say aloud, how it should feel, and your pulse with its doubt.'
		}
	],
	stepsTitle: 'What happens',
	another: 'I have used this on another phone'
};
