/** Where each number is in use. The person picks; nothing guesses a country. */
export const emergencyNumbers: readonly { number: string; places: string }[] = [
	{ number: '112', places: 'European Union and many other countries' },
	{ number: '999', places: 'United Kingdom and Ireland (112 works too)' },
	{ number: '911', places: 'United States and Canada' },
	{ number: '000', places: 'Australia' },
	{ number: '111', places: 'New Zealand' }
];

export const emergency = {
	title: 'Get help now',
	call: (number: string) => `Call ${number}`,
	callOne: 'Call the emergency number where you are',
	steps: [
		'Stop what you are doing and sit down.',
		'Do not drive yourself.',
		'If someone is with you, tell them.'
	],
	goOn: 'Go on',
	watch: 'This app does not watch you and does not call for help.',
	after: 'When the danger is over',
	afterText:
		'See a doctor before you walk or run with us. Then come back and write down what the doctor said.',
	afterStored:
		'We have kept a note that you had an urgent sign, without saying which. Answering the questions again does not remove it. What a doctor says on or after today does.',
	afterNotStored: 'We have not stored anything.',
	mistake: 'I ticked this by mistake',
	mistakeSure: 'Are you sure that you have none of these signs right now?',
	mistakeYes: 'Yes, I have none of them. Remove the note',
	mistakeNo: 'No, keep it',
	mistakeLate:
		'The note can be taken back only in the first ten minutes. Now a doctor’s advice lifts it.',
	mistakeDone: 'The note is removed. Your own list of events shows that this happened.',
	backToQuestions: 'Go back to the question',
	choose: 'Choose your emergency number',
	chooseHint: 'We never guess where you are. The number is kept on this phone and in your account.',
	chosen: (number: string) => `Your emergency number is ${number}.`,
	other: 'Another number',
	otherLabel: 'Number to call',
	save: 'Keep this number',
	change: 'Change the emergency number',
	issues: {
		missing: 'Pick a number, or type another one.',
		'not-a-number': 'Type the number to call: 2 to 15 digits, no letters.'
	} as Record<string, string>
};
