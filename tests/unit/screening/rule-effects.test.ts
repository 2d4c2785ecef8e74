import { expect, test } from 'vitest';
import type { Rule } from '$lib/screening/ruleset.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';

/*
 * What each rule does, for a clinician to read through: outcome, whose kind of reason it is, advice
 * on the same day (urgent), stop exercise that is going on (stop). Basis of each: the sources that
 * the rule names. Kinds, and which signs are urgent, are common practice, no source.
 */
const effects: Readonly<Record<string, string>> = {
	'R-NOW': 'EMERGENCY symptom urgent stop',
	'R-EVENT': 'SEEK_ADVICE symptom urgent stop',
	'R-CHEST-REST': 'SEEK_ADVICE symptom urgent stop',
	'R-CHEST-DAILY': 'SEEK_ADVICE symptom urgent stop',
	'R-CHEST-EXERCISE': 'SEEK_ADVICE symptom urgent stop',
	'R-FAINT': 'SEEK_ADVICE symptom stop',
	'R-DIZZY': 'SEEK_ADVICE symptom stop',
	'R-SIGN-BREATH': 'SEEK_ADVICE symptom stop',
	'R-SIGN-ANKLES': 'SEEK_ADVICE symptom stop',
	'R-SIGN-BEAT': 'SEEK_ADVICE symptom stop',
	'R-SIGN-LEG': 'SEEK_ADVICE symptom stop',
	'R-SIGN-MURMUR': 'SEEK_ADVICE symptom stop',
	'R-SIGN-TIRED': 'SEEK_ADVICE symptom stop',
	'R-HEART-FU': 'SEEK_ADVICE condition',
	'R-CMR-INACTIVE': 'SEEK_ADVICE condition',
	'R-CMR-ACTIVE': 'CLEARED_WALK condition',
	'R-BP-HIGH': 'SEEK_ADVICE condition',
	'R-STROKE': 'SEEK_ADVICE condition',
	'R-DIABETES': 'SEEK_ADVICE condition',
	'R-LUNG': 'SEEK_ADVICE condition',
	'R-CANCER': 'SEEK_ADVICE condition',
	'R-BONE': 'SEEK_ADVICE condition',
	'R-SPINE': 'SEEK_ADVICE condition',
	'R-MENTAL': 'SEEK_ADVICE condition',
	'R-COND-OTHER': 'SEEK_ADVICE condition',
	'R-COND-MULTI': 'SEEK_ADVICE condition',
	'R-MED-UNTOLD': 'SEEK_ADVICE condition',
	'R-JOINT-NERVES': 'SEEK_ADVICE symptom urgent stop',
	'R-JOINT': 'SEEK_ADVICE injury',
	'R-SUPERVISED': 'SEEK_ADVICE condition',
	'R-TOLD-LIMIT': 'SEEK_ADVICE condition',
	'R-RECENT': 'SEEK_ADVICE condition',
	'R-PREG-ASK': 'SEEK_ADVICE pregnancy',
	'R-PREG-WALK': 'CLEARED_WALK pregnancy',
	'R-ILL-HEART': 'SEEK_ADVICE symptom stop',
	'R-ILL': 'WAIT wait',
	'R-AGE-45': 'CLEARED_WALK age',
	'R-AGE-70': 'CLEARED_WALK age',
	'H-MEDS': 'pulse off medicine',
	'H-HEART': 'pulse off condition',
	'H-PREG': 'pulse off pregnancy',
	'H-DIABETES': 'pulse off condition',
	'H-REST': 'pulse off condition until advice',
	'S-INACTIVE': 'start at moderate',
	'S-COND': 'start at moderate',
	'S-PREG': 'start at moderate',
	'A-INHALER': 'care note',
	'A-SUGAR': 'care note',
	'A-HEAT': 'care note',
	'A-PREG': 'care note',
	'A-POSTNATAL': 'care note'
};

function effectOf(rule: Rule): string {
	switch (rule.does) {
		case 'outcome':
			return [rule.outcome, rule.kind, rule.urgent && 'urgent', rule.stopCurrent && 'stop']
				.filter(Boolean)
				.join(' ');
		case 'pulse-off':
			return `pulse off ${rule.kind}${rule.untilAdvice ? ' until advice' : ''}`;
		case 'start':
			return `start at ${rule.startEffort}`;
		case 'advice':
			return 'care note';
	}
}

test('every rule does what the table says, in its order', () => {
	const found = currentRuleset.rules.map((rule) => [rule.id, effectOf(rule)]);
	expect(found).toEqual(Object.entries(effects));
});

test('only may run opens running, and nothing opens where advice or time is needed first', () => {
	expect(currentRuleset.outcomes).toEqual({
		CLEARED_ALL: { run: true, ceiling: 'vigorous' },
		CLEARED_WALK: { run: false, ceiling: 'moderate' },
		WAIT: { run: false, ceiling: 'none' },
		SEEK_ADVICE: { run: false, ceiling: 'none' },
		EMERGENCY: { run: false, ceiling: 'none' }
	});
});

test('whoever plans to walk gets no more than moderate', () => {
	expect(currentRuleset.planLimits).toEqual({
		walk: { run: false, ceiling: 'moderate' },
		walkrun: { run: true, ceiling: 'vigorous' },
		hard: { run: true, ceiling: 'vigorous' }
	});
});
