/** Signs to stop, in our own words, by what is to be done. What each rests on: stop-sign-sources.ts. */
export const stopSigns = {
	now: {
		collapse:
			'Someone does not wake up, or does not breathe normally: call, start chest compressions, send for a defibrillator (AED).',
		chest:
			'Pain, pressure or tightness in the chest, or pain that spreads to the arm, back, neck, jaw or stomach, or with cold sweat, sickness or short breath.',
		breath:
			'Breath that does not come back, no full sentence possible at rest, blue or grey lips, or asthma that the reliever does not ease.',
		faint: 'Fainting, a fit, new confusion, stumbling or odd behaviour.',
		stroke: 'A face that droops, an arm that is weak, speech that is not clear. Note the time.',
		heat: 'Very hot and confused, staggering or collapsed: call, move to shade, cool the whole body with water and ice, go on until help is there. Nothing to drink for someone who is confused.',
		allergy:
			'A severe allergic reaction: swollen lips, tongue or throat, a tight throat, wheeze, or faintness, often with an itchy rash. Use your adrenaline pen if you have one, call, lie down, and do not stand up.',
		bleeding: 'Heavy bleeding, or an injury to the head or neck.',
		pregnant:
			'Pregnant, or a baby in the past year: chest pain, a racing heart, trouble breathing, fainting, a fit, heavy bleeding, or a very bad headache.'
	},
	today: {
		heart:
			'The heart races or skips and does not settle after a few minutes of rest. If you also feel unwell, call for help.',
		calf: 'One calf is suddenly swollen and sore.',
		pregnant:
			'Pregnant: bleeding, fluid, regular painful tightening, headache, dizziness, weak muscles, calf pain or swelling. Also breathless before you begin, changes in your sight, a swollen face or hands, strong belly pain, fever, or the baby moves less. Call your maternity unit or doctor now.'
	},
	rest: {
		dizzy:
			'Dizzy, light-headed, pale or sick: sit or lie down. Not better in 15 minutes: get urgent care.',
		sugar:
			'Diabetes, and shaky or sweaty: fast sugar if you can swallow. Not better in 15 minutes, or drowsy: call for help.',
		wheeze:
			'If you have asthma and wheeze: use your own reliever and rest. If it does not ease, call for help.',
		legs: 'Leg pain that comes with walking and goes with rest.',
		joint:
			'Sharp, new or growing pain in a joint, bone or muscle, or a limp: no running. Walk home if it does not hurt. See a physiotherapist or doctor if it is not better in a few days.'
	},
	talk: {
		talk: 'You can no longer talk, and the line says that you can: slow to a walk.'
	}
} as const;
