import { expect, test } from 'vitest';
import { concluded } from '$lib/screening/concluded.ts';
import { evaluate } from '$lib/screening/evaluate.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { person } from './people.ts';
import { workedCases } from './worked-cases.ts';

const kept = (change = {}) => concluded(currentRuleset, person(change));

test('a result keeps what the rules said and the facts they may need again, nothing else', () => {
	expect(kept({ 'faint.year': 'yes', 'age.years': 46, 'act.hard': 'not_sure' })).toEqual({
		rulesetId: '2026-11',
		rulesetVersion: currentRuleset.version,
		status: 'SEEK_ADVICE',
		reasons: ['R-FAINT', 'R-AGE-45'],
		plan: 'walkrun',
		ageYears: 46,
		activity: { days: 4, minutes: 40, months: 'ge3', hard: 'not_sure' }
	});
});

test('an unfinished form, one with answers that do not fit, and one of a minor leave nothing', () => {
	expect(concluded(currentRuleset, {})).toBeNull();
	expect(kept({ 'chest.pain': undefined })).toBeNull();
	expect(kept({ 'meds.long': 'yes', 'meds.why': 'told' })).toBeNull();
	expect(kept({ 'age.years': 17 })).toBeNull();
	expect(kept({ 'age.years': 17, 'now.urgent': ['chest'] })).toBeNull();
});

test('an emergency leaves a result only where the kept facts were answered', () => {
	expect(kept({ 'now.urgent': ['chest'] })).toMatchObject({
		status: 'EMERGENCY',
		reasons: ['R-NOW']
	});
	expect(concluded(currentRuleset, { 'now.urgent': ['chest'] })).toBeNull();
	expect(concluded(currentRuleset, { 'now.urgent': ['chest'], 'age.years': 40 })).toBeNull();
});

test.each(workedCases.filter(({ unanswered }) => unanswered !== 'the rest'))(
	'the same answers and version always give the same result: $title',
	({ change }) => {
		const evaluation = evaluate(currentRuleset, person(change));
		const result = kept(change);
		if (result === null) return;
		expect(result.status).toBe(evaluation.status);
		expect(result.reasons).toEqual('reasons' in evaluation && evaluation.reasons);
		expect(kept(change)).toEqual(result);
	}
);
