export const offline = {
	title: 'No network right now',
	text: 'There is none, or it is very slow. Nothing was sent and nothing was stored. When it is back, open the page again.',
	works: 'What works without one',
	prompter: 'Your outings, in the prompter',
	first: 'The urgent signs, before anything else',
	urgent:
		'If you ticked one of the urgent signs, get help now. When the network is back, open the first questions and tick it again, so that it counts.'
};
