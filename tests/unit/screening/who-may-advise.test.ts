import { describe, expect, test } from 'vitest';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { AdviceRole, ReasonKind } from '$lib/screening/types.ts';
import { liftableBy } from '$lib/screening/liftable.ts';
import { mayCover, whoMayAdvise } from '$lib/screening/who-may-advise.ts';

/*
 * The project's own table, common practice, no source: a sign of illness needs a doctor; a condition
 * a doctor or nurse; an injury a doctor or physiotherapist; pregnancy a doctor or midwife; an age
 * rule any of these or a qualified exercise professional; medicine a doctor, nurse or pharmacist.
 */
const table: readonly (readonly [AdviceRole, string])[] = [
	//                        symptom condition injury pregnancy age medicine wait
	['doctor', /*            */ 'yes yes yes yes yes yes no'],
	['nurse', /*             */ 'no yes no no yes yes no'],
	['physiotherapist', /*   */ 'no no yes no yes no no'],
	['midwife', /*           */ 'no no no yes yes no no'],
	['pharmacist', /*        */ 'no no no no no yes no'],
	['exercise-professional', 'no no no no yes no no']
];
const kinds: readonly ReasonKind[] = [
	'symptom',
	'condition',
	'injury',
	'pregnancy',
	'age',
	'medicine',
	'wait'
];

const cells = table.flatMap(([role, row]) =>
	row.split(' ').map((cell, place) => [role, kinds[place]!, cell === 'yes'] as const)
);

test.each(cells)('%s about %s: %s', (role, kind, may) => {
	expect(mayCover(role, kind)).toBe(may);
});

test('the table has no other kinds', () => {
	expect(Object.keys(whoMayAdvise).sort()).toEqual([...kinds].sort());
});

test('a role that does not exist covers nothing', () => {
	for (const kind of kinds) expect(mayCover('coach' as never, kind)).toBe(false);
});

describe('every reason that only advice can lift has somebody who may', () => {
	const asking = currentRuleset.rules.filter(
		(rule) => rule.does === 'outcome' && ['SEEK_ADVICE', 'CLEARED_WALK'].includes(rule.outcome)
	);

	test.each(asking)('$id', (rule) => {
		expect(liftableBy([{ rule: rule as never, since: '2026-11-25' }])[0]?.roles).toContain(
			'doctor'
		);
	});
});

test('an emergency and most pulse reasons name nobody', () => {
	const named = (id: string) =>
		liftableBy(
			currentRuleset.rules
				.filter((rule) => rule.id === id)
				.map((rule) => ({ rule: rule as never, since: '2026-11-25' }))
		)[0]?.roles;
	expect(named('R-NOW')).toEqual([]);
	expect(named('H-MEDS')).toEqual([]);
	expect(named('H-REST')).toEqual(['doctor', 'nurse']);
});

test('advice about a sign counts from its latest day on; about anything else from before too', () => {
	const rule = (id: string) => currentRuleset.rules.find((one) => one.id === id) as never;
	const [event, joint] = liftableBy([
		{ rule: rule('R-EVENT'), since: '2026-11-20' },
		{ rule: rule('R-EVENT'), since: '2026-11-25' },
		{ rule: rule('R-JOINT'), since: '2026-11-25' }
	]);
	expect(event).toMatchObject({ reason: 'R-EVENT', countsFrom: '2026-11-25' });
	expect(joint).toMatchObject({ reason: 'R-JOINT', countsFrom: null });
});
