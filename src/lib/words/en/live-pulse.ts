import { plural } from './plural.ts';

export const livePulse = {
	off: 'Your result turns pulse numbers off, so none is shown. Go by how you can talk.',
	title: 'Your pulse now',
	ways: {
		label: 'How do you measure it?',
		'chest-strap': 'Chest strap',
		tapped: 'Tap along',
		counted: 'Count 10 s'
	},
	now: 'pulse now',
	bpm: 'bpm',
	none: 'no pulse yet',
	hidden: 'hidden until you guess',
	band: (low: number | null, high: number) =>
		low === null ? `band: under ${high}` : `band: ${low}–${high}`,
	swellText: (bpm: number | null, low: number | null, high: number) =>
		[
			low === null
				? `Your band is under ${high} beats a minute.`
				: `Your band is ${low} to ${high}.`,
			bpm === null ? 'There is no pulse to show.' : `Your pulse is ${bpm}.`
		].join(' '),
	talk: {
		'over-limit': (limit: number) =>
			`This is over your care team’s limit of ${limit}. Slow down now, whatever else feels right.`,
		'ease-off':
			'Your pulse looks fine, but your talk broke off. Talk decides: ease off until you can say the line.',
		'no-faster':
			'Your pulse is over the band, but you talk with ease. Talk decides: stay as you are, and go no faster. On a hot day or after a bad night, ease off.',
		'nothing-to-chase':
			'Your pulse is under the band, but talk says that this is enough. Talk decides: there is nothing to chase.'
	},
	strap: {
		choose: 'Choose a strap',
		again: 'Try again',
		other: 'Choose another strap',
		stop: 'Let the strap go',
		looking: 'Looking for Bluetooth.',
		here: {
			'not-in-this-browser':
				'This browser cannot speak to a strap. Tap along with your pulse, or count it.',
			'not-secure':
				'A strap works only at a safe address, one that starts with https. Tap along with your pulse, or count it.',
			off: 'Bluetooth is off, or this device has none. Switch it on, then look again.'
		},
		lookAgain: 'Look again',
		lead: 'Wet the strap, put it on, and choose it from the list that your browser shows.',
		states: {
			choosing: 'Pick your strap from the list.',
			connecting: 'Connecting to the strap.',
			away: 'The strap is gone. Trying again by itself. Go by talk until it is back.',
			'given-up': 'The strap did not come back. Is it still on, and near?'
		},
		connected: {
			known: 'The strap is connected.',
			'nothing-yet': 'The strap is connected. Waiting for its first beats.',
			settling: 'The strap is connected. Waiting for a steady pulse.',
			'contact-lost':
				'The strap has lost your skin. Wet it, and pull it a little tighter. Go by talk.',
			silent: 'The strap has gone quiet. Go by talk.',
			unsteady: 'The strap’s numbers jump about. Wet it, and pull it a little tighter. Go by talk.'
		},
		battery: (percent: number) => `Its battery is at ${percent} %.`,
		batteryLow: (percent: number) =>
			`Its battery is low, at ${percent} %. Change it before your next outing.`,
		faults: {
			'nothing-chosen':
				'No strap was chosen. Is Bluetooth on? Is the strap wet, and on your chest? Many sleep until then.',
			off: 'Bluetooth is off, or this device has none. Switch it on, then try again.',
			refused: 'The browser does not allow it. Look at its settings for this site.',
			'no-pulse': 'That device sends no pulse in the open way. Choose another.',
			'not-reached': 'The strap could not be reached. Does another phone or watch hold it?'
		}
	},
	tap: {
		lead: 'Walk or stand. Feel your pulse at the wrist or the neck, and tap with each beat.',
		button: 'Tap with each beat',
		left: (taps: number) => plural(taps, { one: 'One more tap.', other: `${taps} more taps.` }),
		uneven: 'The taps came too unevenly. Slow down or stand, and go on tapping.',
		notBelieved: 'No heart beats like that. Stop for a moment, and begin again.',
		told: (bpm: number, spread: number) =>
			`${bpm} beats a minute, give or take ${spread}. Go on tapping to keep it new.`
	},
	count: {
		lead: 'Walk or stand. Find your pulse first. Then start the clock, and count each beat until it ends.',
		low: (bpm: number) =>
			`Count within five seconds of slowing down: a pulse falls at once. Even so a count reads some ${bpm} beats low when you sit.`,
		beats: 'Beats in 10 seconds',
		done: 'Work it out',
		notWhole: 'Type a whole number of beats, such as 21.',
		notBelieved: 'That would be under 25 or over 230 beats a minute. Please count again.',
		told: (beats: number, bpm: number, spread: number, most: number) =>
			`${beats} beats in ten seconds are ${bpm} a minute, give or take ${spread}, and never off by more than ${most}.`
	}
};

export const tryStrap = {
	title: 'Try your strap',
	lead: 'See here, before an outing, whether your pulse can be read. Nothing on this page is kept.',
	doubt:
		'A strap can be wrong, and this is no medical device. How you feel and how you can talk come first.',
	loading: 'Getting it ready.',
	noScript: 'This page needs script. You can still count your pulse with any clock.',
	needResting:
		'There is no band yet. Measure your resting pulse, and the band stands beside the pulse here.',
	bandOf: (phase: string) => `The band is that of your ${phase.toLowerCase()}.`,
	talkTitle: 'Which one counts?',
	talkLead: 'Say a long sentence aloud. How was that?',
	browsersTitle: 'Where a strap works',
	// What browsers can do: from memory, as of this year.
	browsers: [
		'Chrome, Edge and Opera on Android, Windows, macOS and ChromeOS: a strap works.',
		'Chrome on Linux: a strap works where Bluetooth has been set up for it.',
		'Safari, and any browser on an iPhone or iPad: web pages get no Bluetooth. Tap or count.',
		'Firefox: web pages get no Bluetooth. Tap or count.'
	],
	straps:
		'The strap has to speak the open Bluetooth heart-rate service. Most chest straps do. It speaks to one phone at a time, so end other apps that hold it.',
	measure: 'Measure my resting pulse',
	stop: 'Signs to stop',
	back: 'To my bands'
};
