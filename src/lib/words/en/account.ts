import { plural } from './plural.ts';

/** What stands in a table whose row cannot be read. */
const unreadableWhat: Record<string, string> = {
	advice: 'Advice',
	audit: 'A line of what happened, and when',
	band_setting: 'A band that a coach set for you',
	emergency_contact: 'Whom to call for you',
	guess: 'A guess',
	health_event: 'The note of an urgent sign',
	outing_plan: 'An outing that you made',
	past_entry: 'A line of an outing that you did',
	profile: 'Your resting pulse, and what you told about yourself',
	runner_pain: 'What you told about pain',
	screening_draft: 'Answers of the first questions that you have not finished',
	screening_result: 'A result'
};

export const account = {
	title: 'Your account',
	lead: 'Everything that Breathmark holds about you, and what you can do with it.',
	begin: 'Begin with the first questions',
	none: 'There is nothing stored for this phone. An account begins when you agree to the first questions.',
	settings: 'Settings',
	theme: 'Light or dark',
	themes: { system: 'As the phone', light: 'Light', dark: 'Dark' } as Record<string, string>,
	timeZone: 'Your time zone',
	timeZoneHint: 'Dates such as the end of your result follow it.',
	saved: 'Kept.',
	save: 'Keep these settings',
	held: 'What is held',
	unreadable:
		'Some of what we stored about you cannot be opened any more. Everything else is here, and in your file. Please tell whoever runs this server. You can still delete everything.',
	unreadableRow: (table: string, when: string | null) =>
		`${unreadableWhat[table] ?? 'Something else'}${when === null ? '' : `, written down on ${when}`}`,
	results: 'Results',
	resultRow: (date: string, words: string) => `${date}: ${words}`,
	resultEnded: 'ended when you said that something changed',
	consents: 'What you agreed to',
	consentRow: (date: string) => `Health answers, agreed on ${date}`,
	consentWithdrawn: (date: string) => `taken back on ${date}`,
	events: 'Urgent signs',
	eventRow: (date: string) => `A sign was ticked on ${date}`,
	eventWithdrawn: 'taken back as a mistake',
	adviceHeld: 'Advice',
	outings: 'Past outings and pain',
	outingCount: (count: number) =>
		plural(count, {
			one: 'One outing, with what you said of talk, effort and pain, and pulses where they were measured.',
			other: `${count} outings, with what you said of talk, effort and pain, and pulses where they were measured. The newest:`
		}),
	outingRow: (date: string, length: string) => `${date}: ${length}`,
	toOutings: 'Read them all, or delete one',
	painRow: (said: string, when: string) => `The last pain that you told: ${said}, on ${when}.`,
	painGone: (when: string) => `You said on ${when} that it is gone.`,
	painStands: 'You have not said yet that it is gone.',
	audit: 'What happened, and when',
	auditWhat: {
		'consent.given': 'You agreed to the use of your health answers',
		'consent.withdrawn': 'You took your agreement back',
		'result.stored': 'You finished the first questions',
		'result.invalidated': 'You said that your health or plan changed',
		'result.loosened': 'You said why a looser result came within a day',
		'event.recorded': 'An urgent sign was noted',
		'event.withdrawn': 'The note of an urgent sign was taken back as a mistake',
		'advice.recorded': 'You wrote down advice',
		'advice.removed': 'You removed advice',
		'pulses.forgotten': 'Stored pulses were deleted, because pulse numbers are off',
		'device.linked': 'Another phone was added with a code',
		'tablet.returned': 'The questions were opened again on a shared tablet, with a code',
		'session.revoked': 'A phone was signed out',
		'passkey.removed': 'A passkey was removed',
		'group.joined': 'You joined a group, and agreed that its coaches see your result',
		'group.left': 'You left a group',
		'group.removed': 'A coach took you off the list of a group',
		'group.ended': 'A group that you were in was deleted',
		'sharing.given': 'You agreed that the coaches of a group see your result',
		'sharing.withdrawn': 'You stopped sharing your result with coaches',
		'contact.kept': 'You wrote down whom to call for you',
		'contact.removed': 'You removed whom to call for you',
		'contact.read': 'A coach looked up whom to call for you',
		'bands.set': 'A coach set a band for you',
		'advice.confirmed': 'A coach confirmed advice that you wrote down',
		'advice.unconfirmed': 'A coach took the confirmation of advice back',
		'step.set': 'A coach changed your place in the programme'
	} as Record<string, string>,
	empty: 'Nothing yet.',
	exportTitle: 'Take your data with you',
	exportText: 'One file with everything, in an open format (JSON).',
	export: 'Get my data',
	otherPhone: 'Use it on another phone',
	otherPhoneText:
		'Make a code here, then type it on the other phone. It works once, for ten minutes.',
	makeCode: 'Make a code',
	code: 'Your code',
	codeHow: (until: string) =>
		`Open “Use on another phone” at the foot of any page there and type this. It ends at ${until}.`,
	passkeys: 'Passkeys',
	passkeysText: 'A passkey lets you come back with your fingerprint, face or screen lock.',
	addPasskey: 'Add a passkey',
	passkeyAdded: 'The passkey is added.',
	passkeyFailed: 'No passkey was added. You can try again.',
	passkeyUnsupported: 'This browser has no passkeys.',
	passkeyRow: (date: string) => `Passkey from ${date}`,
	remove: 'Remove',
	withdraw: 'Take back my agreement',
	withdrawText:
		'Your bands close at once. Your data stays until you delete it. You can agree again later.',
	withdrawGo: 'Take it back',
	delete: 'Delete everything',
	deleteText:
		'This deletes your account, results, advice, pulses, outings and settings for good. It cannot be undone.',
	deleteBox: 'I want to delete everything',
	deleteIssue: 'Tick the box first.',
	deleteGo: 'Delete everything now',
	deleted: 'Everything is deleted.',
	signOut: 'Forget me on this phone',
	signOutText:
		'This phone can no longer open your data. With another phone or a passkey you can. Without one nobody can, and then it is deleted within a day or so.',
	signOutGo: 'Forget me here',
	signOutUnsent: (count: number) =>
		plural(count, {
			one: '1 entry of an outing on this phone was not sent yet. It would be lost. Open the prompter with a network first.',
			other: `${count} entries of an outing on this phone were not sent yet. They would be lost. Open the prompter with a network first.`
		}),
	signOutPrompter: 'To the prompter',
	issues: {
		'unknown-option': 'Pick one of the choices.',
		'too-long': 'Use at most 40 characters.'
	} as Record<string, string>
};

export const link = {
	title: 'Use on another phone',
	lead: 'On the phone that you used before, open Account and make a code. Type it here.',
	code: 'Code',
	hint: 'Eight letters and numbers, such as K7QF-2MXR. Capitals do not matter.',
	go: 'Use this code',
	passkeyTitle: 'Or with a passkey',
	passkey: 'Come back with a passkey',
	passkeyFailed: 'That passkey did not work here.',
	lost: 'I have neither',
	replaces: 'This phone already holds another account. The code puts the other one in its place.',
	issues: {
		missing: 'Type the code.',
		wrong:
			'This code does not work. It may be mistyped, used, or older than ten minutes. Make a new one.',
		'too-many': 'Too many tries. Wait ten minutes and make a new code.'
	} as Record<string, string>
};
