/** What browsers can and cannot do in an outing; read by whoever asks for it. */
export const lacks = {
	here: 'This browser does not have:',
	none: 'This browser has all that the prompter uses.',
	of: {
		'screen-on': 'A way to keep the screen on. Touch it now and then, or set the phone to stay on.',
		sound: 'Tones. Voice, vibration and the flash are left.',
		voice: 'A voice. Tones, vibration and the flash are left.',
		vibration: 'Vibration. Tones, voice and the flash are left.',
		strap: 'A way to a chest strap. You can tap along with your pulse, or count it.'
	},
	elsewhere: 'As far as we know, and not tried on every phone:',
	// Sources of these four: README, "What browsers lack".
	browsers: [
		'With the screen locked, Android mostly plays the track of tones on. An iPhone may stop it, most of all from the home screen. Voice stops on most phones, and vibration on all.',
		'iPhones and iPads have no vibration in any browser, and Firefox has none anywhere. Chrome and Edge have it on Android.',
		'The screen is kept on by Chrome and Edge from 2020 on, Safari from 16.4, Firefox from 126. An app on the home screen of an iPhone needs iOS 18.4. Saving power can turn that off.'
	],
	straps:
		'A chest strap works in Chrome, Edge and Opera on Android and on most computers. Safari and Firefox have no way to one, and no browser on an iPhone or iPad has.'
};
