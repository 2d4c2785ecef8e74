/** The words of one question. The ids belong to the rule set; only these words are translated. */
export interface QuestionWords {
	readonly text: string;
	readonly help: string | null;
	/** One or two sentences: why we ask. */
	readonly why: string;
	/** By option id. Empty for a number. */
	readonly options: Readonly<Record<string, string>>;
}

const yesNo = { yes: 'Yes', no: 'No', not_sure: 'Not sure' };
const none = 'None of these';
const tickIfUnsure = 'If you are not sure, tick it.';

/**
 * The questions of rule set 2026-11, by question id. Written for this app; only the topics follow
 * published guidance. No wording hints at which answer opens the gate.
 */
export const questions: Readonly<Record<string, QuestionWords>> = {
	'now.urgent': {
		text: 'Do you have any of these right now?',
		help: 'If you are not sure, tick it. If you tick one of these, stop here and get help.',
		why: 'These may need help within minutes. So we ask about them first.',
		options: {
			chest: 'Pain, pressure or tightness in my chest',
			breath: 'So short of breath that it is hard to talk',
			faint: 'I passed out today, or I feel I am about to',
			stroke: 'My face droops, my arm is weak, or my speech is not clear',
			heart: 'My heart is racing or skipping and I feel unwell',
			none
		}
	},
	'age.years': {
		text: 'How old are you?',
		help: 'Type your age in whole years, such as 46.',
		why: 'The questions are made for adults. Your age also changes how fast your heart can beat, and how we suggest you start.',
		options: {}
	},
	'plan.effort': {
		text: 'What do you plan to do?',
		help: 'You can change your plan later. Then we ask again.',
		why: 'Running is hard work for a body that is new to it. Walking asks less of your heart, so fewer people need advice first.',
		options: {
			walk: 'Walk only',
			walkrun: 'Walk with bits of easy running',
			hard: 'Run, with some hard efforts'
		}
	},
	'act.days': {
		text: 'On how many days a week do you move enough to breathe a bit harder?',
		help: 'Think of a brisk walk. Use a normal week. Type 0 if there is no such day.',
		why: 'A body that is used to moving copes better with more. What you do now decides how gently you start.',
		options: {}
	},
	'act.minutes': {
		text: 'On those days, for how many minutes?',
		help: 'Type 0 if you do not do this.',
		why: 'Half an hour at a time is what most research counts as regular.',
		options: {}
	},
	'act.months': {
		text: 'How long have you kept that up?',
		help: 'If you do not do this yet, pick the first answer.',
		why: 'We count it as a habit after three months. Before that, a gentle start is wiser.',
		options: { lt3: 'Less than 3 months', ge3: '3 months or more' }
	},
	'act.hard': {
		text: 'In most weeks, do you do exercise so hard that you can only say a few words?',
		help: 'For example a fast run, a hard game or a steep climb.',
		why: 'Hard effort is a big step for a body that is not used to it, more so after 45. This tells us how big the step is.',
		options: yesNo
	},
	'ill.today': {
		text: 'Do you feel ill today?',
		help: 'For example a fever, a bad cold, flu, a chest bug, or being sick.',
		why: 'Hard effort with a fever or a chest bug can strain the heart. A few days of rest do no harm.',
		options: yesNo
	},
	'ill.heart': {
		text: 'Since an illness in the past few months, have you had chest pain, a racing heart, or odd trouble breathing?',
		help: 'Say No if you have not been ill.',
		why: 'Some illnesses trouble the heart or the lungs for a while. A doctor should look at that before you run.',
		options: yesNo
	},
	'signs.other': {
		text: 'Have you noticed any of these in the past few months?',
		help: tickIfUnsure,
		why: 'Each of these can have a harmless cause. It can also come from the heart, so a doctor should look first.',
		options: {
			breathless: 'Out of breath at rest, or with easy tasks',
			lying: 'Hard to breathe when I lie flat, or I wake up fighting for breath',
			ankles: 'Both ankles swell up',
			palpitations: 'My heart pounds, races or skips for no clear reason',
			legpain: 'Pain in my calf or leg when I walk, which goes away when I rest',
			murmur: 'I was told that I have a heart murmur',
			tired: 'Much more tired than normal after my usual tasks',
			none
		}
	},
	'chest.pain': {
		text: 'When do you get pain, pressure or tightness in your chest?',
		help: 'Tick all that fit. If you are not sure, tick it. If you do not get it, choose None of these.',
		why: 'Chest pain can come from the heart. Effort makes the heart work harder, so this is checked first.',
		options: {
			rest: 'When I sit or lie still',
			daily: 'When I do everyday jobs, like stairs or housework',
			exercise: 'When I exercise or walk fast',
			none
		}
	},
	'dizzy.balance': {
		text: 'Do dizzy spells make you wobble, stumble or fall?',
		help: null,
		why: 'A dizzy spell can end in a fall. It can also mean that too little blood gets to your head.',
		options: yesNo
	},
	'dizzy.breathing': {
		text: 'Does it only happen when you breathe very hard or very fast?',
		help: 'For example in a hard sprint.',
		why: 'Feeling dizzy from very hard breathing is common and soon passes. Other dizzy spells need a look first.',
		options: yesNo
	},
	'faint.year': {
		text: 'Since this time last year, have you blacked out or fainted, even for a few seconds?',
		help: null,
		why: 'Fainting can come from the heart. Its cause should be known before you run.',
		options: yesNo
	},
	'joint.sore': {
		text: 'Is a part of your body sore or hurt, so that more walking or running could make it worse?',
		help: 'Think back over the past year: bones, joints, muscles, tendons and your back. If an old problem no longer holds you back, say No.',
		why: 'Sore shins and knees are the most common harm when people begin to run. A part that hurts now needs care first.',
		options: yesNo
	},
	'joint.now': {
		text: 'Which of these fit that problem now?',
		help: tickIfUnsure,
		why: 'Some sore parts only need a gentle start. These should be looked at before you load them.',
		options: {
			limits: 'It limits what I can do now',
			weight: 'I cannot put my full weight on it, or it is newly swollen',
			break: 'I broke a bone or had surgery on it in the past 3 months',
			nerves: 'My legs are weak or numb, or I have new trouble with my bladder or bowels',
			none
		}
	},
	'recent.event': {
		text: 'Have any of these happened to you?',
		help: tickIfUnsure,
		why: 'After any of these the body needs time. Your care team knows how much.',
		options: {
			surgery: 'An operation in the past 3 months',
			hospital: 'A night in hospital in the past 3 months',
			head: 'A head injury with concussion in the past year',
			none
		}
	},
	'limits.set': {
		text: 'Has a doctor, nurse or physio set limits on your exercise?',
		help: tickIfUnsure,
		why: 'What they said comes before any plan of ours.',
		options: {
			watched: 'Yes. I should only exercise where medical staff can watch me',
			avoid: 'Yes. I should avoid or cut back on some exercise',
			none
		}
	},
	'cond.list': {
		text: 'Which of these long-term health problems do you have?',
		help: 'Tick all that fit. If you are not sure, tick it. You do not need to give details.',
		why: 'Most people with these can be active, and it does them good. Some need a word with a doctor or nurse first.',
		options: {
			stroke: 'A stroke or mini-stroke (TIA)',
			legartery: 'Narrow or blocked leg arteries',
			diabetes: 'Diabetes',
			kidney: 'Kidney disease',
			lung: 'Asthma, COPD or another lung problem',
			cancer: 'Cancer, now or in the past',
			bone: 'Arthritis, weak bones or a back problem',
			spine: 'A spinal cord injury',
			nerve: 'Epilepsy, MS, Parkinson’s or another brain or nerve problem',
			mental: 'A mental health or learning problem that affects daily life',
			other: 'Another long-term health problem',
			none
		}
	},
	'cond.stroke': {
		text: 'About your stroke: do any of these fit?',
		help: tickIfUnsure,
		why: 'A stroke that is recent, or still makes walking hard, needs a plan from your care team.',
		options: {
			six: 'It was less than 6 months ago',
			walk: 'It makes walking or balance hard',
			hard: 'It is hard to keep under control',
			none
		}
	},
	'cond.diabetes': {
		text: 'About your diabetes: do any of these fit?',
		help: tickIfUnsure,
		why: 'Your blood sugar drops when you exercise. If it is hard to steer, or has done harm, your care team should help you plan.',
		options: {
			control: 'My blood sugar is often hard to control',
			low: 'My blood sugar often drops too low',
			harm: 'It has harmed my eyes, kidneys, heart or the feeling in my feet',
			none
		}
	},
	'cond.lung': {
		text: 'About your breathing: do any of these fit?',
		help: tickIfUnsure,
		why: 'Running makes you breathe much harder. Lungs that are not settled should be looked at first.',
		options: {
			hard: 'It is hard to keep under control',
			oxygen: 'I use oxygen, or was told my oxygen is low',
			often: 'I wheeze, cough or feel tight most days, or I use my reliever more than twice a week',
			attack: 'I needed urgent care for asthma in the past year',
			lungbp: 'I was told the blood pressure in my lungs is high',
			none
		}
	},
	'cond.cancer': {
		text: 'About your cancer: do any of these fit?',
		help: tickIfUnsure,
		why: 'Being active can help during and after cancer. In these cases your care team should choose how.',
		options: {
			now: 'I am having treatment now',
			type: 'It is in my lungs, bone marrow, head or neck, or has spread to bone',
			none
		}
	},
	'cond.bone': {
		text: 'About your bones and joints: do any of these fit?',
		help: tickIfUnsure,
		why: 'Running loads bones and joints more than walking does. In these cases somebody should look first.',
		options: {
			hard: 'It is hard to keep under control',
			break: 'A recent break, a slipped bone in my back, or joints that hurt',
			steroid: 'I have taken steroid pills or had steroid shots often in the past 3 months',
			none
		}
	},
	'cond.spine': {
		text: 'About your spinal cord injury: do any of these fit?',
		help: tickIfUnsure,
		why: 'After such an injury blood pressure can drop or jump when you exercise. Somebody who knows you should plan it.',
		options: {
			hard: 'It is hard to keep under control',
			lowbp: 'Low blood pressure that makes me dizzy',
			spikes: 'Sudden spikes of very high blood pressure',
			none
		}
	},
	'cond.mental': {
		text: 'About that health problem: do any of these fit?',
		help: tickIfUnsure,
		why: 'Being active often helps. In these cases the right person should plan it with you.',
		options: {
			hard: 'It is hard to keep under control',
			neck: 'I have Down syndrome with a neck or back problem',
			none
		}
	},
	'heart.told': {
		text: 'Do you have a heart problem that a doctor or nurse knows about?',
		help: 'For example a heart attack, angina, a stent or a weak heart. A valve problem or an uneven heart beat counts too. Say Yes if you had it in the past.',
		why: 'Many people with a heart problem can exercise. How much is right is for someone who knows your heart to say.',
		options: yesNo
	},
	'heart.hard': {
		text: 'Is your heart problem hard to keep under control, even with treatment?',
		help: 'Say No if you do not need any treatment.',
		why: 'A heart that is not settled should be looked at before it works harder.',
		options: yesNo
	},
	'heart.rhythm': {
		text: 'Do you have a pacemaker, or a heart beat problem that needs care?',
		help: 'For example a heart beat that is uneven or very fast. Say Yes if you have a shock device (ICD) in your chest.',
		why: 'Effort changes the beat of the heart. Your heart team can say what is safe for you.',
		options: yesNo
	},
	'heart.failure': {
		text: 'Have you been told that your heart does not pump well?',
		help: 'Doctors call this heart failure.',
		why: 'Exercise often helps here too, but your heart team should set how much.',
		options: yesNo
	},
	'heart.quiet2m': {
		text: 'Have you done hardly any exercise in the past 2 months?',
		help: null,
		why: 'With a heart problem, a start after a long rest should be planned with your doctor.',
		options: yesNo
	},
	'bp.told': {
		text: 'Is your blood pressure high, or do you take medicine to bring it down?',
		help: null,
		why: 'Effort raises blood pressure for a while. If it starts out too high, it should come down first.',
		options: yesNo
	},
	'bp.hard': {
		text: 'Is your blood pressure hard to bring down, even with medicine?',
		help: 'Say No if you do not take medicine for it.',
		why: 'If medicine does not bring it down, your doctor or nurse should look again before you start.',
		options: yesNo
	},
	'bp.last': {
		text: 'What was your last blood pressure reading?',
		help: 'A reading has two numbers, such as 130 over 80. Many pharmacies can check it.',
		why: 'From 160 over 90 on, it should be looked at first. If you do not know it, have it checked.',
		options: {
			under: 'Under 160 on top and under 90 below',
			over: '160 or more on top, or 90 or more below',
			dont_know: 'I do not know'
		}
	},
	'meds.rate': {
		text: 'Do you take any medicine that changes how fast your heart beats?',
		help: 'Beta blockers are the best known. Their names often end in -olol. They are also used for migraine, worry or shaking, and in some eye drops. Some heart, blood pressure, thyroid and ADHD medicines count too. A pharmacist can tell you.',
		why: 'With such a medicine, pulse numbers can be wrong for you. Then we show none, and you go by how you talk. Never change or skip a medicine because of this app.',
		options: yesNo
	},
	'meds.long': {
		text: 'Do you take any other medicine for a health problem that has lasted for months or years?',
		help: null,
		why: 'A medicine can point to a problem that we did not ask about. It can also change how you cope with heat.',
		options: yesNo
	},
	'meds.why': {
		text: 'What do you take that medicine for?',
		help: 'If any of it is for a problem that you have not told us about, pick that answer.',
		why: 'This makes sure that we did not miss a health problem.',
		options: {
			told: 'A health problem that I told you about here',
			minor: 'A skin problem, an allergy, birth control, HRT or something mild',
			untold: 'A health problem that I have not told you about',
			not_sure: 'Not sure'
		}
	},
	'meds.sugar': {
		text: 'Do you take insulin, or pills that can make your blood sugar drop too low?',
		help: null,
		why: 'With these, your sugar can drop during or after exercise. Then you need something sweet with you.',
		options: yesNo
	},
	'preg.status': {
		text: 'Are you pregnant, or have you had a baby in the past year?',
		help: 'You can choose not to say.',
		why: 'Most people can stay active in these months. What is right changes, so your doctor or midwife should have a say.',
		options: {
			no: 'No, or this cannot apply to me',
			pregnant: 'I am pregnant, or I may be',
			baby: 'I had a baby in the past year',
			private: 'I would rather not say'
		}
	},
	'preg.ok': {
		text: 'Has your doctor or midwife said that exercise is OK for you now?',
		help: 'Your own doctor or midwife is the one to ask.',
		why: 'They know you and how things are going. We follow what they said.',
		options: {
			run: 'Yes, walking and running',
			walk: 'Yes, but only walking',
			no: 'No, or I have not asked',
			not_sure: 'Not sure',
			private: 'I would rather not say'
		}
	}
};
