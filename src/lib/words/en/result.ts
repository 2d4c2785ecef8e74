import type { AccessCode, AdviceRole } from '$lib/screening/types.ts';
import { faults } from './faults.ts';
import { or } from './lists.ts';

interface ResultWords {
	title: string;
	what: string[];
	next: string[];
}

/** A code, or a variant of one that needs other words. */
export type ResultHeading =
	AccessCode | 'BY_TALK' | 'WALK_PLAN' | 'WALK_ADVISED' | 'WALK_PAIN' | 'SEEK_TODAY' | 'WITHDRAWN';

/** What a runner reads for each code. The page adds the reasons and who may lift them. */
export const results: Record<ResultHeading, ResultWords> = {
	CLEARED_ALL: {
		title: 'From what you told us, you may run',
		what: ['Begin gently and build up. Stop if you feel unwell.'],
		next: ['See your bands: how hard each part of an outing should feel for you.']
	},
	BY_TALK: {
		title: 'From what you told us, you may run, by how you talk',
		what: [
			'Go by what you can say and how it feels. We show you no pulse numbers, because they could be wrong for you.',
			'Begin gently and build up. Stop if you feel unwell.'
		],
		next: ['See your bands: the line to say and how it should feel.']
	},
	WALK_PLAN: {
		title: 'From what you told us, you may walk',
		what: [
			'You plan to walk only. Walk at a pace where you can talk.',
			'Brisk walking counts in full: it is real training for your heart.'
		],
		next: [
			'See your walking bands.',
			'If you want to run one day, say that your plan changed and answer again.'
		]
	},
	WALK_ADVISED: {
		title: 'From the advice you had, you may walk',
		what: [
			'You wrote down advice that says walking only. Walk at a pace where you can talk.',
			'Brisk walking counts in full: it is real training for your heart.'
		],
		next: [
			'See your walking bands.',
			'When a professional says that you may run, write that down and remove the older advice.'
		]
	},
	WALK_PAIN: {
		title: 'No running while it hurts',
		what: [
			'You told us about new or growing pain. No running until it is gone. Walk if walking does not hurt.',
			'A sore shin or knee is the most common harm of starting to run. A pause now is short.'
		],
		next: [
			'See a physiotherapist or a doctor if it is not better in a few days, if you limp, or if it hurts at rest.',
			'One calf suddenly swollen and sore: see a doctor today.',
			'When it is gone, say so here. Then your runs come back.'
		]
	},
	SEEK_TODAY: {
		title: 'Ask first, today',
		what: ['Do not start with us before a doctor has looked at this.'],
		next: [
			'Print the page for your doctor and take it with you.',
			'When you have the advice, write it down here. It lifts exactly the reasons that it covers.'
		]
	},
	WITHDRAWN: {
		title: 'You took your agreement back',
		what: ['So there is no result that counts. What is stored stays locked until you delete it.'],
		next: ['If you want to go on, agree again. The form starts blank.']
	},
	CLEARED_WALK: {
		title: 'From what you told us, you may walk',
		what: [
			'Walk at a pace where you can talk. No running yet.',
			'Brisk walking counts in full: it is real training for your heart.'
		],
		next: [
			'See your walking bands.',
			'If you want to run, ask one of the people named above, then write down what they said.'
		]
	},
	WAIT: {
		title: 'Not today',
		what: [
			'Rest for now and come back when you feel well.',
			'If you had a fever, wait until it has gone, and start easier than before. If you get chest pain or trouble breathing, get medical help.'
		],
		next: ['When you feel well again, tell us. It takes two questions, not the whole form.']
	},
	SEEK_ADVICE: {
		title: 'Ask first',
		what: [
			'Please get advice before you start. Many people with these answers can be active. We only want the right person to look first.',
			'You can keep up your normal daily life.'
		],
		next: [
			'Print the page for your doctor and take it with you.',
			'When you have the advice, write it down here. It lifts exactly the reasons that it covers.'
		]
	},
	EMERGENCY: {
		title: 'Get help now',
		what: ['You told us about a sign that may need help right now.'],
		next: ['Afterwards: ask a doctor first.']
	},
	INCOMPLETE: {
		title: 'A few answers are missing',
		what: ['Without them we cannot give you a result.'],
		next: ['Go on with the questions.']
	},
	NOT_ELIGIBLE: {
		title: faults['not-eligible']?.title ?? '',
		what: [faults['not-eligible']?.text ?? ''],
		next: ['Ask your group, a school or a doctor about a way for young people.']
	},
	NO_RESULT: {
		title: 'No result yet',
		what: ['Answer the first questions. Then you see here what you may do.'],
		next: ['It takes about five minutes.']
	},
	EXPIRED: {
		title: 'Please answer again',
		what: ['A result counts for twelve months. Yours has ended.'],
		next: ['Answer the first questions again. The form starts blank.']
	},
	RESCREEN: {
		title: 'Please answer again',
		what: [
			'Your health, your plan or our question set changed, or you began to answer again. So the old result no longer counts.'
		],
		next: ['Answer the first questions again. The form starts blank.']
	}
};

export const roles: Record<AdviceRole, string> = {
	doctor: 'a doctor',
	nurse: 'a nurse',
	physiotherapist: 'a physiotherapist',
	midwife: 'a midwife',
	pharmacist: 'a pharmacist',
	'exercise-professional': 'a qualified exercise professional'
};

/** "a doctor", "a doctor or a nurse", "a doctor, a nurse or a pharmacist". */
export const oneOf = or;

export const result = {
	title: 'Result',
	whyTitle: 'Why',
	nextTitle: 'What next',
	earlierCounts:
		'Something that was told before today still counts. A shared tablet does not show it. Ask your doctor before you do more than stands here.',
	liftedBy: (who: string) => `Who can lift this: ${who}.`,
	liftedByWaiting: 'This ends when you feel well again.',
	covered: 'Already covered by advice',
	urgent: 'Please call your doctor or a health line today.',
	worse: 'If it comes back or gets worse before that, call for help:',
	takeBack: 'I ticked an urgent sign by mistake',
	settlesInTitle: 'From what you told us, you begin by walking',
	settlesIn:
		'You begin with settling in: at least six walks over at least two weeks. After them you may run: short runs first.',
	stopCurrent: 'Stop exercise until you have been checked.',
	risk: 'No form can remove all risk. Stop if you feel unwell.',
	until: (date: string) => `This counts until ${date}, or until your health changes.`,
	careTitle: 'Take care of this',
	startTitle: 'Your first weeks',
	pulseOffTitle: 'Why there are no pulse numbers',
	actions: {
		bands: 'See my bands',
		doctor: 'Page for my doctor',
		advice: 'I have had advice',
		change: 'My health changed',
		well: 'I feel well again',
		again: 'Answer again',
		start: 'Answer the first questions',
		goOn: 'Go on with the questions'
	},
	closedByAdvice:
		'You wrote down advice that says: nothing yet, not before you are seen again. It closes until you remove it, when you have been seen.',
	contestTitle: 'If you think this is wrong',
	contest: [
		'You can answer again at any time.',
		'Ask a doctor, or talk with your coach. A person, not this form, has the last word on what is right for you, and a coach can offer another way without this app.',
		'Nobody has to use this form.'
	],
	draft:
		'The question set is a draft that no clinician has reviewed yet. Local rules, insurance and licensed practice come first.',
	version: (id: string, version: string) => `Question set ${id}, version ${version}.`,
	answersDeleted: 'Your answers have been deleted. What stays is this result.'
};

export const change = {
	title: 'My health changed',
	text: 'A new medicine or dose, a new diagnosis, an operation, a hospital stay, an injury, a pregnancy or a birth: any of these ends your result at once. Then you answer the questions again.',
	plan: 'It is the same when you plan something harder than before, such as running after a walk-only plan.',
	go: 'End my result and answer again',
	no: 'Nothing changed'
};

export const wellAgain = {
	title: 'Do you feel well again?',
	feelWell: {
		label: 'Do you feel well, with any fever gone?',
		yes: 'Yes, I feel well',
		no: 'No, not yet'
	},
	signs: {
		label: 'Since you were ill, have you had chest pain, a racing heart or odd trouble breathing?',
		no: 'No',
		yes: 'Yes',
		not_sure: 'Not sure'
	},
	sameDay: 'You told us today that you feel ill. Come back tomorrow or later.',
	stillIll: 'Then rest. Your result stays at “not today”. Come back when you feel well.',
	go: 'Send',
	issue: 'Pick one answer.'
};
