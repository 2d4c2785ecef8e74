/** Where one is stuck: what to do first, each with the page that does it. */
export const help = {
	title: 'When you are stuck',
	lead: 'Nothing here is lost without your pressing so. Find what fits, and take the first step.',
	wrong: {
		title: 'Something feels wrong in your body',
		text: 'Stop first. The signs to stop say when to call for help, also without a network.',
		go: 'Signs to stop'
	},
	sections: [
		{
			id: 'closed',
			title: 'My bands are closed',
			text: 'Your result says why, who can open them again, and what you may do until then. If you think that it is wrong, you can answer again at any time, or ask a doctor.',
			links: [{ href: '/screening/result', text: 'See your result' }]
		},
		{
			id: 'lost',
			title: 'This phone does not know me any more',
			text: 'If another phone still does, open Account there and make a code, then type it here. A passkey works as well. Without either nobody can find you: we keep no e-mail of runners. Then answer the questions again, and join your group again with its link. Tell your coach, so that your old name can come off the list.',
			links: [
				{ href: '/link', text: 'Type a code, or use a passkey' },
				{ href: '/screening', text: 'Answer the questions again' }
			]
		},
		{
			id: 'invitation',
			title: 'The link from my coach does not work',
			text: 'Links end after a while, and a coach can take one back. Open the whole link, to its last letter. If it still does not work, ask your coach for a new one. You can answer the questions before you have it.',
			links: [{ href: '/screening', text: 'Begin with the questions' }]
		},
		{
			id: 'network',
			title: 'There is no network',
			text: 'The signs to stop open without one, once this phone has been here before. So does the prompter, with your outings of the next 14 days. What you do is kept on the phone and sent later, so do not clear it before.',
			links: [{ href: '/prompter', text: 'Open the prompter' }]
		},
		{
			id: 'coach',
			title: 'I coach, and cannot sign in',
			text: 'Ask for a link that sets a new password. If you were invited and your link has ended, ask whoever sent it for another.',
			links: [
				{ href: '/coach/forgot', text: 'Set a new password' },
				{ href: '/coach/sign-in', text: 'Sign in' }
			]
		},
		{
			id: 'fault',
			title: 'A page says that something went wrong',
			text: 'Try again in a minute. If it happens again, tell whoever runs this server, with the number on that page. What you stored before is still there.',
			links: [{ href: '/', text: 'Go to the start page' }]
		}
	]
} as const;
