interface Fault {
	readonly title: string;
	readonly text: string;
	/** A way on of its own, before those that every such page has. */
	readonly way?: { readonly href: string; readonly text: string };
}

/** One message per code, for the page that is shown when something could not be done. */
export const faults: Record<string, Fault> = {
	'not-found': {
		title: 'This page is not here',
		text: 'Nothing is lost. Go back, or begin at the start page.'
	},
	'too-large': {
		title: 'That was too much at once',
		text: 'The form that was sent is larger than any of our forms. Nothing was stored. Go back and try again.'
	},
	'cross-site': {
		title: 'This form was not sent from here',
		text: 'Open the page again in this tab and send the form from it. Nothing was stored.'
	},
	vault: {
		title: 'The health data cannot be opened right now',
		text: 'This server does not have the key that the data was locked with. Nothing is lost, and nothing was changed. Until the key is back, no bands can be shown and no questions can be stored. Please tell whoever runs this server.'
	},
	unreadable: {
		title: 'A part of your data cannot be read',
		text: 'Something that we stored about you cannot be opened, so we cannot tell what you may do, and show no bands. Please tell whoever runs this server. On the account page you can still delete everything.'
	},
	'needs-https': {
		title: 'This needs a safe connection',
		text: 'Questions, bands and accounts work only over https, or on the computer that runs Breathmark. Ask whoever runs this server for its https address.'
	},
	closed: {
		title: 'This is closed for now',
		text: 'Your result does not open this page. The result page says why, and what you can do next.'
	},
	'made-up': {
		title: 'Only made-up people are here',
		text: 'The made-up group is in this app right now. Until it is removed, nobody real can begin here. Nothing was stored.'
	},
	'not-eligible': {
		title: 'This is for adults',
		text: 'Our questions were not made for people under 18, and we kept none of the answers. A younger person needs questions made for them, and a parent or carer. Ask your group, a school or a doctor. If your age was a slip of the finger, answer again.',
		way: { href: '/screening', text: 'Answer again' }
	},
	'too-many': {
		title: 'Too many tries',
		text: 'Please wait a few minutes and try again.'
	},
	'bad-request': {
		title: 'We could not read that',
		text: 'Go back and try again. Nothing was stored.'
	},
	unexpected: {
		title: 'Something went wrong on our side',
		text: 'Nothing that you had stored is lost. Try again in a minute.'
	}
};

export const faultId = (id: string) => `If you report this, give this number: ${id}`;
export const faultHome = 'Go to the start page';

/** The whole message of a fault, for a page that has no room for more. */
export const faultText = (code: string) => {
	const fault = faults[code] ?? faults.unexpected;
	return `${fault?.title}. ${fault?.text}`;
};
