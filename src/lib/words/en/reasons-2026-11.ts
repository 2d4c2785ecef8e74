/**
 * What the runner reads for each rule of set 2026-11 that fired, by rule id. Nobody else reads it.
 * The care notes, whose ids begin with A, have their text below.
 */
export const reasons: Readonly<Record<string, string>> = {
	'R-NOW': 'You told us about a sign that may need help right now.',
	'R-EVENT': 'You told us about an urgent sign. A doctor should look at it before you go on.',
	'R-CHEST-REST': 'You get chest pain or pressure at rest.',
	'R-CHEST-DAILY': 'You get chest pain or pressure in everyday tasks.',
	'R-CHEST-EXERCISE': 'You get chest pain or pressure when you exercise.',
	'R-FAINT': 'You passed out in the past year, or you are not sure.',
	'R-DIZZY': 'Dizzy spells upset your balance.',
	'R-SIGN-BREATH': 'You get short of breath more easily than you should.',
	'R-SIGN-ANKLES': 'Your ankles swell up.',
	'R-SIGN-BEAT': 'Your heart pounds, races or skips.',
	'R-SIGN-LEG': 'Your leg hurts when you walk and eases when you rest.',
	'R-SIGN-MURMUR': 'You were told about a heart murmur.',
	'R-SIGN-TIRED': 'You feel much more tired than normal.',
	'R-HEART-FU': 'Your heart problem needs advice first.',
	'R-CMR-INACTIVE':
		'You have a heart, blood vessel, kidney or blood sugar problem, and you are not yet active most weeks.',
	'R-CMR-ACTIVE':
		'You have a heart, blood vessel, kidney or blood sugar problem. Walking is fine. Ask before you run.',
	'R-BP-HIGH': 'Your blood pressure is high, hard to bring down, or not known.',
	'R-STROKE': 'Your stroke needs advice first.',
	'R-DIABETES': 'Your blood sugar needs advice first.',
	'R-LUNG': 'Your breathing needs advice first.',
	'R-CANCER': 'Your cancer or its treatment needs advice first.',
	'R-BONE': 'Your bones or joints need advice first.',
	'R-SPINE': 'Your spinal cord injury needs advice first.',
	'R-MENTAL': 'Your health problem needs advice first.',
	'R-COND-OTHER': 'You have a health problem that our questions do not cover.',
	'R-COND-MULTI': 'You have more than one long-term health problem.',
	'R-MED-UNTOLD': 'You take a medicine, but we do not know what it is for.',
	'R-JOINT-NERVES':
		'Weak or numb legs, or new trouble with bladder or bowels, need a doctor today.',
	'R-JOINT': 'Your sore or injured part needs advice first.',
	'R-SUPERVISED': 'You were told to exercise only where medical staff can watch.',
	'R-TOLD-LIMIT': 'You were told to avoid or cut back on some exercise.',
	'R-RECENT': 'You had an operation, a stay in hospital or a head injury.',
	'R-PREG-ASK': 'Please talk with your doctor or midwife first.',
	'R-PREG-WALK': 'Walk only, until your doctor or midwife says that running is fine.',
	'R-ILL-HEART': 'You had heart or breathing signs after an illness.',
	'R-ILL': 'You feel ill today.',
	'R-AGE-45': 'You are over 45 and new to hard exercise. Get advice before you run.',
	'R-AGE-70': 'You are 70 or over and not yet active most weeks. Get advice before you run.',
	'H-MEDS': 'A medicine may change how fast your heart beats.',
	'H-HEART': 'A heart problem can make pulse numbers wrong for you.',
	'H-PREG': 'For you, talk and feel are a better guide than pulse.',
	'H-DIABETES': 'Nerve harm from diabetes can change your pulse.',
	'H-REST':
		'Your resting pulse was under 40 or over 100 on two mornings. Ask a doctor or nurse about that first.',
	'S-INACTIVE': 'You are new to regular exercise. Start easy and build up.',
	'S-COND': 'You have a health problem. Start easy and build up.',
	'S-PREG': 'Start easy and build up slowly.'
};

/** Care notes by rule id: what to do, in two to four sentences. */
export const careNotes: Readonly<Record<string, string>> = {
	'A-INHALER':
		'Carry your reliever inhaler with you, if you have one. Warm up slowly, most of all in cold air. If you wheeze or your chest feels tight, stop, use it and rest. If it does not help, call for help.',
	'A-SUGAR':
		'Check your sugar before and after each outing. Carry something sweet that works fast, such as juice. If you feel shaky, sweaty or muddled, stop and take it at once. Tell the people with you what to do.',
	'A-HEAT':
		'Heat can be harder on you than on others. On hot days go early or late, in the shade, for less time. Drink when you are thirsty. If you feel dizzy, sick or muddled, stop and cool down.',
	'A-PREG':
		'Go by how you talk, and keep out of the heat. Stop and call your doctor or midwife if you bleed, lose fluid or get painful cramps. Do the same with chest pain, a bad headache, a dizzy spell, or a sore and swollen calf. Call too if your baby moves less.',
	'A-POSTNATAL':
		'Begin with easy walks and add a little each week. Run only when a brisk walk feels fine, with no pain, no leaks and no heavy feeling down below. If one of these comes, ease back and ask your doctor, midwife or physio.'
};

/** Answers that cannot both be true, by conflict id. */
export const conflicts: Readonly<Record<string, string>> = {
	'C-MED-TOLD':
		'You said that your medicine is for a problem you told us about, but no problem is ticked. Please look at both answers.',
	'C-HARD-NONE':
		'You said that you often exercise hard, but on no day of the week. Please look at both answers.'
};

/** Why the form ends for good, by gate id. */
export const gates: Readonly<Record<string, string>> = {
	'G-MINOR':
		'These questions are for adults. People under 18 need questions made for them, and a parent or carer.'
};
