export const offline = {
	title: 'No network right now',
	text: 'Nothing was sent and nothing was stored. When the network is back, open the page again.',
	prompter: 'The prompter works without one',
	urgent:
		'If you ticked one of the urgent signs, get help now. When the network is back, open the first questions and tick it again, so that it counts.'
};
