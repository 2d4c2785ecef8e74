const passwordIssues = {
	missing: 'Type a password.',
	'too-short': 'Use at least 10 characters.',
	'too-long': 'Use at most 128 characters.',
	'is-you': 'This is your name or your e-mail. Choose something that nobody can guess from them.',
	'too-common': 'Many people use this one, so it is tried first. Choose another.'
};

const issues: Readonly<Record<string, Readonly<Record<string, string>>>> = {
	name: {
		missing: 'Type your name.',
		'too-long': 'Use at most 60 characters.',
		'not-a-name': 'Type your name, in any script.'
	},
	qualification: { 'too-long': 'Use at most 120 characters.' },
	email: {
		missing: 'Type your e-mail.',
		'not-an-email': 'Type an e-mail address, such as name@example.org.'
	},
	password: passwordIssues,
	current: {
		missing: 'Type the password that you have now.',
		'too-long': 'This is not your password.',
		wrong: 'This is not your password.'
	},
	aside: { missing: 'Tick the box, or use another browser.' },
	signUp: { missing: 'Pick one of the two.', 'unknown-option': 'Pick one of the two.' },
	sure: { missing: 'Tick the box first.' }
};

/** An issue of a form of the coach's account, in words. */
export const coachIssue = (field: string, code: string) => issues[field]?.[code] ?? code;

export const coachFields = {
	name: 'Your name',
	nameHint: 'Your runners and the other coaches of a group see it.',
	qualification: 'Your qualification, if you have one',
	qualificationHint: 'As you would say it. Your runners see it where it counts.',
	email: 'E-mail',
	emailHint: 'You sign in with it. Runners do not see it.',
	password: 'Password',
	newPassword: 'New password',
	passwordHint: 'At least 10 characters. Any characters, spaces too: three or four words are good.',
	stay: 'Stay signed in on this device',
	stayHint: 'Leave this box empty on a device that others use.'
};

export const runnerHere = {
	title: 'A runner’s account is on this device',
	text: 'This browser can hold one account. If you go on, the runner’s account is put aside. Without a code or a passkey there is no way back to it.',
	how: 'Make a code or a passkey first',
	box: 'Put the runner’s account aside'
};

export const signIn = {
	title: 'Sign in as a coach',
	go: 'Sign in',
	wrong: 'This e-mail and password do not go together. Check both, capitals too.',
	tooMany: 'There were too many tries. Wait a quarter of an hour, or ask for a new password.',
	forgot: 'I forgot my password',
	signUp: 'I have no account yet',
	passkeyTitle: 'Or with a passkey',
	passkey: 'Sign in with a passkey',
	passkeyFailed: 'That passkey did not work here.',
	notes: {
		made: 'If this e-mail was new here, your account is ready. Sign in with it now. If the password does not fit, you may have had an account before: ask for a new password.',
		invited:
			'If this e-mail was new here, your account is ready. Sign in with it now. If you had an account before, open the invitation again and choose “I have an account”. If the password does not fit, ask for a new one.',
		changed: 'Your new password is set. Sign in with it.',
		out: 'You are signed out on this device.'
	} as Record<string, string>
};

export const signUp = {
	title: 'Make a coach’s account',
	first: 'You are the first coach here',
	firstText:
		'So you become the host of this Breathmark: you decide who else may become a coach. You can hand this over later.',
	closed: 'Ask for an invitation',
	closedText:
		'New coaches come by invitation here. Ask the person who runs this Breathmark, or the owner of your group, for a link.',
	go: 'Make my account',
	haveOne: 'I have an account',
	tooMany: 'There were too many tries from here. Wait an hour and try again.',
	kept: 'Kept are your name, e-mail, password (as a code that cannot be turned back) and the devices that you use. You can delete all of it.'
};

export const forgot = {
	title: 'A new password',
	lead: 'Type your e-mail. We send you a link with which you set a new password.',
	go: 'Send me the link',
	sent: 'If a coach has this e-mail here, a link is on its way. It works once, for one hour. Look in the spam folder too.',
	tooMany: 'A link was asked for too often. Wait an hour and try again.',
	noMail: 'This Breathmark sends no mail',
	noMailText:
		'So the person who runs it makes the link for you. Ask them to run this on its computer, with your e-mail in it:',
	noMailThen: 'They give you the link that it prints. It works once, for one hour.',
	hostToo: 'If you run it yourself, do the same.',
	command: 'npm run reset-password -- you@example.org',
	back: 'Back to signing in'
};

export const reset = {
	title: 'Set a new password',
	lead: 'You are signed out on every device. Then sign in with the new password.',
	go: 'Set this password',
	noLink: 'This link does not work',
	noLinkText: 'It was used, or it is older than one hour. Ask for a new one.',
	another: 'Ask for a new link'
};

export const invited = {
	title: 'You are invited to coach',
	by: (name: string) => `${name} invites you to become a coach here.`,
	byInto: (name: string, group: string) => `${name} invites you to help with “${group}”.`,
	none: 'This invitation does not work',
	noneText: 'It was used or taken back, or it is older than seven days. Ask for a new one.',
	accept: 'Join as a coach',
	already: 'You are a coach here already, so you need no invitation.',
	toDesk: 'Go to your groups',
	newTitle: 'I am new here',
	oldTitle: 'I have an account',
	signInGo: 'Sign in and accept'
};

export const coachMail = {
	subject: 'A new password for Breathmark',
	text: (link: string) =>
		[
			'Somebody asked for a new password for your coach’s account, perhaps you.',
			'Open this within one hour to set one. It works once:',
			link,
			'If it was not you, do nothing. Your password stays as it is.'
		].join('\n\n')
};

export const coachAccount = {
	title: 'Your account',
	you: 'About you',
	times: (zone: string) => `Time zone of this page: ${zone}.`,
	signedInAs: (email: string) => `You sign in as ${email}.`,
	host: 'You are the host of this Breathmark.',
	save: 'Keep this',
	saved: 'Kept.',
	password: 'Change your password',
	passwordText: 'Your other devices are signed out.',
	current: 'Password now',
	change: 'Change it',
	changed: 'Your password is changed. Your other devices are signed out.',
	tooMany: 'There were too many tries. Wait a quarter of an hour.',
	devices: 'Where you are signed in',
	device: (name: string, date: string) => `${name}, last used on ${date}`,
	thisDevice: 'this device',
	unknownDevice: 'A device',
	browserOn: (browser: string, system: string) => `${browser} on ${system}`,
	signOutDevice: 'Sign out',
	signOutOthers: 'Sign out everywhere else',
	passkeys: 'Passkeys',
	passkeysText: 'A passkey lets you sign in with your fingerprint, face or screen lock.',
	passkeyRow: (date: string) => `Passkey from ${date}`,
	remove: 'Remove',
	addPasskey: 'Add a passkey',
	passkeyAdded: 'The passkey is added.',
	passkeyFailed: 'No passkey was added. You can try again.',
	passkeyUnsupported: 'This browser has no passkeys.',
	house: 'Who may become a coach here',
	houseOpen: 'Anybody who opens the sign-up page',
	houseInvitation: 'Only people with an invitation',
	houseGo: 'Keep this choice',
	invitations: 'Invite a coach',
	invitationsText:
		'A link lets one person make a coach’s account here. It works once, for seven days. Send it to that person alone.',
	invite: 'Make a link',
	link: 'The link. It is shown only now:',
	linkEnds: (date: string) => `It ends on ${date}.`,
	invitationRow: (date: string) => `Link made on ${date}`,
	invitationStates: {
		open: 'not used yet',
		used: 'used',
		revoked: 'taken back',
		ended: 'over'
	},
	revoke: 'Take back',
	handOver: 'Hand the house over',
	handOverText: 'Another coach becomes the host, and you are one coach among others.',
	handOverTo: 'To whom',
	handOverGo: 'Hand it over',
	history: 'What happened, and when',
	historyWhat: {
		'password.changed': 'You changed your password',
		'password.reset': 'A new password was set with a link',
		'session.revoked': 'A device was signed out',
		'passkey.removed': 'A passkey was removed'
	} as Record<string, string>,
	empty: 'Nothing yet.',
	signOut: 'Sign out',
	signOutGo: 'Sign out on this device',
	delete: 'Delete your account',
	deleteText:
		'Your name, e-mail, password, passkeys and devices are deleted for good. Groups that have another owner stay with them. Bands and notes that you set stay under your name.',
	onlyOwner:
		'You are the only owner of these groups. Make somebody else an owner, or delete them first:',
	hostFirst: 'You are the host, and there are other coaches. Hand the house over first.',
	deleteBox: 'I want to delete my account',
	deleteGo: 'Delete my account now',
	gone: 'Your account is deleted',
	goneText: 'Nothing that could sign you in is left here.'
};
