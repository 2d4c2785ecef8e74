import type { stopSigns } from './stop-signs.ts';

/** A short name of each sign, and what it rests on. "Quoted": read in another publication only. */
type Named = { readonly name: string; readonly basis: string };

export const stopSignSources = {
	caption: 'Each sign, and the guidance that it is taken from',
	columns: { sign: 'Sign', basis: 'Rests on' },
	note: 'All signs are in our own words. “Quoted” means: read in another text, not in the guidance itself. A clinician has still to read this list.',
	of: {
		now: {
			collapse: { name: 'Collapse', basis: 'British Red Cross: first aid with an AED.' },
			chest: { name: 'Chest pain', basis: 'AHA: signs of a heart attack. NHS: when to call 999.' },
			breath: {
				name: 'Breath',
				basis: 'NAC Australia: first aid for asthma. NHS: when to call 999.'
			},
			faint: {
				name: 'Fainting, confused',
				basis: 'ACSM: when to end a test, quoted. NHS: when to call 999.'
			},
			stroke: {
				name: 'Face, arm, speech',
				basis: 'Mayo Clinic: act FAST. Note the time: US stroke association, quoted.'
			},
			heat: { name: 'Heat stroke', basis: 'ACSM 2021. US CDC, quoted.' },
			allergy: { name: 'Allergy', basis: 'NHS and Anaphylaxis UK.' },
			bleeding: { name: 'Bleeding, head or neck', basis: 'NHS: when to call 999.' },
			pregnant: {
				name: 'Pregnant: call now',
				basis:
					'US list of warning signs for mothers (Texas DSHS). To call for these is our own caution.'
			}
		},
		today: {
			heart: {
				name: 'Racing heart',
				basis: 'ACSM: signs and symptoms. A few minutes: DCU, Dublin.'
			},
			calf: { name: 'Swollen calf', basis: 'NHS: blood clots, quoted.' },
			pregnant: {
				name: 'Pregnant: call your unit',
				basis:
					'ACOG 2020: signs to stop, quoted. US list of warning signs for mothers (Texas DSHS).'
			}
		},
		rest: {
			dizzy: {
				name: 'Dizzy, pale, sick',
				basis: 'ACSM: when to end a test, quoted. The minutes: common practice, no source.'
			},
			sugar: { name: 'Low sugar', basis: 'ACSM 2022. The minutes: ADA, quoted.' },
			wheeze: { name: 'Wheeze', basis: 'NAC Australia: first aid for asthma.' },
			legs: {
				name: 'Leg pain in walking',
				basis: 'British Heart Foundation: painful legs. ACSM: signs and symptoms.'
			},
			joint: { name: 'Joint, bone, muscle', basis: 'common practice, no source' }
		},
		talk: {
			talk: { name: 'No talk', basis: 'Talk test: Foster 2008. What to do: our own rule.' }
		}
	} satisfies { [Group in keyof typeof stopSigns]: Record<keyof (typeof stopSigns)[Group], Named> }
};
