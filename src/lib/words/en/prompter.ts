import type { CueKind } from '$lib/outing/phase-cues.ts';
import { helpHere } from './help-here.ts';
import { decimal } from './numbers.ts';
import { plural } from './plural.ts';

export const prompter = {
	title: 'Prompter',
	usual: 'The plain outing',
	opening: 'One moment.',
	couldNotLoad: 'A part of this page did not arrive. Load it again with a network.',
	noStore:
		'This browser keeps nothing on this phone, so an outing could get lost. A private window does that. Open this page in another window or browser.',
	day: {
		title: 'Before you start',
		hint: 'Three questions for today. If you are not well or have a new sign, this phone stays closed until tomorrow. What you said is not kept.',
		well: 'Do you feel well today?',
		sign: 'Any new pain, chest feeling, dizzy spell or odd breathlessness since last time?',
		change: 'Any change in your health or your medicine?',
		yes: 'Yes',
		no: 'No',
		goOn: 'Go on',
		missing: 'Please answer all three.'
	},
	notToday: {
		title: 'Not today',
		text: 'Rest, and come back when you feel well. The prompter stays closed on this phone until tomorrow.',
		signs: 'Signs to stop',
		signText:
			'Please read the signs to stop first. If you have one of them now, get help. If not, ask a doctor before you walk or run.',
		changeText:
			'Then your result no longer fits. Say what changed, and answer the first questions again.',
		change: 'My health changed',
		back: 'Back to your bands'
	},
	shut: {
		title: 'The prompter is closed',
		closed:
			'Your result does not open it now, or you are not signed in on this phone. The result page says why, and what you can do next.',
		ended:
			'This phone has kept your bands for as long as it may. Open this page with a network, and it goes on.',
		'clock-set-back':
			'The clock of this phone was set back, so we cannot know whether your result still holds. Open this page with a network.',
		'no-network':
			'There is no network, and nothing of yours is kept on this phone yet. Open this page once with a network; after that it works without one.',
		result: 'Go to your result',
		again: 'Try again'
	},
	choose: {
		title: 'Which outing?',
		today: 'Today',
		any: 'Any day',
		later: 'In the next 14 days',
		length: (minutes: number, runs: number, longest: string) =>
			runs === 0
				? `${minutes} minutes of walking.`
				: `${minutes} minutes, ${runs} ${plural(runs, { one: 'run', other: 'runs' })}; the longest is ${longest}.`,
		walksInstead: 'Runs are brisk walks for you now.',
		shortened: (longest: string) =>
			`Runs last ${longest} at most for you now. Walk on while the others still run.`,
		settling: 'You are settling in, so there is no run in it.',
		take: 'Take this one',
		takeOf: (name: string) => `Take this one: ${name}`,
		own: 'Make an outing of your own'
	},
	clear: {
		title: 'What lies on this phone',
		text: 'Your bands and the outings of the next 14 days, and what you did that was not sent yet. With a network this page brings the first back each time. To keep it off a phone that others use, choose “Forget me here” on the account page.',
		lost: (count: number) =>
			plural(count, {
				one: '1 entry was not sent yet. It would be lost for good.',
				other: `${count} entries were not sent yet. They would be lost for good.`
			}),
		go: 'Clear this phone',
		sure: 'Clear it all the same',
		keep: 'Keep it',
		account: 'To the account page',
		done: 'This phone is empty now',
		doneText: 'Your account is as it was. This phone is still signed in to it.'
	},
	outbox: {
		waiting: (count: number) =>
			plural(count, {
				one: '1 entry is waiting to be sent.',
				other: `${count} entries are waiting to be sent.`
			}),
		refused: (count: number) =>
			plural(count, {
				one: '1 entry could not be kept in your account.',
				other: `${count} entries could not be kept in your account.`
			}),
		full: 'Something could not be written on this phone. It may be full.'
	},
	ready: {
		title: 'Your outing',
		target: 'Every run is comfortable: you can talk all through it.',
		place: 'Where are you?',
		places: { outdoors: 'Outdoors', treadmill: 'On a treadmill' },
		shows: 'How fast, shown as',
		showsAs: {
			pace: (unit: string) => `Pace (${unit})`,
			speed: (unit: string) => `Speed (${unit})`
		},
		missing: 'Say where you are.',
		cautions: [
			'Find the stop button first. Clip the safety cord to your clothes and try it once.',
			'Stand on the side rails, start the belt at its slowest, then step on and hold the rail.',
			'Change speed in small steps. Look ahead. Let go of the rail when you are steady.',
			'Never step off a moving belt. Keep 2 m free behind it, and children and pets away.'
		],
		cautionsTitle: 'On a treadmill',
		cautionsRead: 'I have read this',
		cautionsMissing: 'Read the cautions first.',
		hot: 'It is hot today',
		givenHot: 'Your coach has marked today as hot.',
		heat: 'Heat makes any pace harder: go by the line, walk in the shade, drink when you are thirsty. In a public heat warning do not run. This outing is then not compared with others.',
		cues: 'How I am told what comes next',
		cue: {
			sound: 'Sound',
			voice: 'Voice',
			vibration: 'Vibration',
			flash: 'A flash of the screen'
		},
		track: 'Tones with the screen locked',
		trackHint:
			'The tones then play as a track, with your phone’s own buttons. It stops other music on many phones. Some phones stop it after a while, iPhones above all when they save power. Try it once at home.',
		guess: 'Practise: guess, then look',
		guessHint:
			'Near the end of a part you guess the effort, and the pulse too where a chest strap measures it. Until you have guessed, its number is hidden.',
		guessHintByTalk: 'Near the end of a part you guess the effort, then say how talk was.',
		locked:
			'Keep this page open and the screen on: with the screen locked most phones stop voice and vibration. The clock is still right when you look again.',
		start: 'Start'
	},
	lacksTitle: 'What browsers can and cannot do',
	run: {
		of: (place: number, of: number) => `part ${place} of ${of}`,
		left: (time: string) => `${time} left`,
		clock: (time: string) => `${time} to the end of this part`,
		band: 'band',
		bpm: 'beats a minute',
		feels: (low: number, high: number) => `feels ${low} to ${high} of 10`,
		then: (name: string, time: string) => `then: ${name.toLowerCase()}, ${time}`,
		last: 'then: done',
		pause: 'Pause',
		resume: 'Go on',
		paused: 'Paused',
		skip: 'Skip this part',
		more: '30 s more',
		waitsForTap: 'Tones, voice and vibration wait for a tap on this page.',
		soundAgain: 'Sound on again',
		longer: 'Do you need longer? Walk on while the others run.',
		end: 'End early',
		pulse: 'Pulse',
		noPulse: 'Hide pulse',
		showPulse: 'Show it without a guess',
		bright: 'Bright screen',
		dark: 'Dark screen',
		endTitle: 'End early',
		coolDown: 'Walk to cool down',
		endNow: 'End now',
		keep: 'Stay in the outing',
		ended: 'Your result has ended. Please walk to cool down.',
		endedByClock:
			'The clock of this phone was set back, so no numbers can be shown. Please walk to cool down.',
		wrong: 'Something feels wrong',
		hot: 'It is hot: walk in the shade, and drink when you are thirsty.',
		speed: (speed: number, unit: string) => `${decimal(speed, 1)} ${unit}`,
		pace: (time: string, unit: string) => `${time} ${unit}`
	},
	leap: {
		title: 'Did you go on?',
		text: (minutes: number) =>
			`The clock of this phone went on by ${minutes < 120 ? `${minutes} minutes` : `${Math.round(minutes / 60)} hours`} that this page did not see. By that clock the outing is over.`,
		'went-on': 'Yes, to the end',
		stopped: 'No, I stopped',
		'clock-set': 'The clock was changed. Go on from here'
	},
	talk: {
		ask: 'Say the line aloud. How was that?',
		afterwards: (name: string) => `${name}: how was talking at its end?`,
		passage: 'Read this aloud',
		howPassage: 'How was that?',
		levels: {
			comfortable: 'comfortable',
			'with-breaths': 'with breaths',
			'broke-off': 'broke off'
		},
		effort: 'How hard, 0 to 10?',
		speed: 'Speed used',
		slower: 'Slower',
		faster: 'Faster',
		noSpeed: 'not set'
	},
	steer: {
		comfortable: 'Good. Stay like this.',
		'with-breaths': 'Ease off a little. Only the last third of a run may feel like that.',
		'broke-off': 'Slow to a walk now. Skip the rest of a run if talk does not come back.'
	},
	wrong: {
		title: 'Stop and stand still',
		clock: 'The clock has stopped.',
		help: helpHere,
		ask: 'What was it?',
		signs: {
			'call-now': 'One of the signs to call for help now',
			'doctor-today': 'One of the signs to see a doctor today',
			'ask-first': 'One of the other signs',
			pain: 'Sharp, new or growing pain, nothing else',
			'not-said': 'I would rather not say',
			none: 'None of these. Go on'
		},
		all: 'All signs to stop'
	},
	closed: {
		title: 'No more today',
		text: 'See a doctor before you walk or run with us. Then come back and write down what the doctor said. Until then the prompter and your bands stay closed.',
		sent: 'We have kept a note that there was a sign.',
		waiting: 'It is sent when there is a network and this page is open.',
		send: 'Send it now',
		result: 'Go to your result'
	},
	pain: {
		ask: 'Any new or growing pain?',
		morning: 'The morning after: any new or growing pain?',
		levels: { none: 'No', new: 'Yes, new pain', growing: 'Yes, it is growing' },
		where: 'Where?',
		places: {
			foot: 'Foot',
			ankle: 'Ankle',
			shin: 'Shin',
			calf: 'Calf',
			knee: 'Knee',
			thigh: 'Thigh',
			hip: 'Hip',
			back: 'Back',
			elsewhere: 'Somewhere else'
		},
		text: 'Then no running until it is gone. If it is not better in a few days, see a physiotherapist or a doctor.',
		none: 'Good. Thank you.'
	},
	over: {
		title: 'Done',
		text: 'Walk on for a little. Do not stop dead.',
		morning: 'We ask the same tomorrow morning: shins and knees often speak up late.',
		signs: 'The signs to stop count in the next hours as well.',
		again: 'Back to your bands'
	},
	cues: {
		'half-way': 'Half-way.',
		'one-minute-left': 'One minute left.',
		three: 'Three.',
		two: 'Two.',
		one: 'One.',
		finished: 'Done. Walk on for a little.'
	} satisfies Record<Exclude<CueKind, 'phase-begins'>, string>,
	begins: (name: string, seconds: number) =>
		seconds < 120 ? `${name}, ${seconds} seconds.` : `${name}, ${Math.round(seconds / 60)} minutes.`
};

/** Where there is no script to bring it. */
export const withoutScript =
	'The prompter keeps time, so it needs script. Your card has the same lines on paper.';
