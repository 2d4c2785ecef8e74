export const safety = {
	title: 'Signs to stop',
	lead: 'You can stop at any time. You never need to give a reason.',
	nowTitle: 'Stop and call for help now',
	now: [
		'Someone does not wake up, or does not breathe normally: call, start chest compressions, send for a defibrillator (AED).',
		'Pain, pressure or tightness in the chest, or pain that spreads to the arm, back, neck, jaw or stomach, or with cold sweat, sickness or short breath.',
		'Breath that does not come back, no full sentence possible at rest, blue or grey lips, or asthma that the reliever does not ease.',
		'Fainting, a fit, new confusion, stumbling or odd behaviour.',
		'A face that droops, an arm that is weak, speech that is not clear. Note the time.',
		'Very hot and confused, staggering or collapsed: call, move to shade, cool the whole body with water and ice, go on until help is there. Nothing to drink for someone who is confused.',
		'Swelling of the face or throat, heavy bleeding, an injury to the head or neck.'
	],
	todayTitle: 'Stop, and see a doctor today',
	today: [
		'The heart races or skips and does not settle after a few minutes of rest. If you also feel unwell, call for help.',
		'One calf is suddenly swollen and sore.',
		'Pregnant: bleeding, fluid, regular painful tightening, headache, calf pain, dizziness, or the baby moves less. Call your maternity unit or doctor now.'
	],
	restTitle: 'Stop, rest, and ask before the next outing',
	rest: [
		'Dizzy, light-headed, pale or sick: sit or lie down. Not better in 15 minutes: get urgent care.',
		'Diabetes, and shaky or sweaty: fast sugar if you can swallow. Not better in 15 minutes, or drowsy: call for help.',
		'If you have asthma and wheeze: use your own reliever and rest. If it does not ease, call for help.',
		'Leg pain that comes with walking and goes with rest.',
		'Sharp, new or growing pain in a joint, bone or muscle, or a limp: no running. Walk home if it does not hurt. See a physiotherapist or doctor if it is not better in a few days.'
	],
	talkTitle: 'Ease off',
	talk: ['You can no longer talk, and the line says that you can: slow to a walk.'],
	call: 'Number to call',
	nobody: 'No number is chosen yet.',
	basis:
		'From published stop signs of heart, sports medicine and ambulance bodies, restated in our own words. Times in minutes are common practice, no source. Local rules and what your own doctor told you come first.',
	afterTitle: 'After an outing',
	after:
		'Walk for six minutes or more; do not stop dead. The same signs count in the hours afterwards.'
};
