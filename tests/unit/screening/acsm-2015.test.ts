import { describe, expect, test } from 'vitest';
import { access } from '$lib/screening/access.ts';
import { evaluate } from '$lib/screening/evaluate.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { opennessOf, strictestCeiling } from '$lib/screening/strictness.ts';
import type { Answers, Ceiling } from '$lib/screening/types.ts';
import {
	acsmTable,
	diseases,
	nineSigns,
	notRegularPeople,
	plansFor,
	regularPeople,
	type AcsmRow
} from './acsm-2015.ts';
import { adviceOf, asked, person, resultOf } from './people.ts';

/** Every person that a row speaks about: each disease, each sign, each way of not being regular. */
function peopleOf(row: AcsmRow): readonly Answers[] {
	const activity = row.regular ? regularPeople : notRegularPeople;
	const disease = row.disease ? Object.values(diseases) : [{}];
	const signs = row.signs ? Object.values(nineSigns).flat() : [{}];
	return activity.flatMap((active) =>
		disease.flatMap((ill) =>
			signs.flatMap((sign) =>
				plansFor[row.wanted].flatMap((plan) =>
					// Used to hard effort or not: ACSM does not ask.
					['yes', 'no'].map((hard) => ({
						...active,
						...ill,
						...sign,
						'plan.effort': plan,
						'act.hard': hard
					}))
				)
			)
		)
	);
}

/** The stricter of how far the gate opens and how effort starts. */
function mostEffort(row: AcsmRow, change: Answers): Ceiling {
	if (row.clearedBefore) {
		const result = resultOf(change);
		const may = access(asked(result, { advice: [adviceOf(result.reasons)] }));
		return may.allowed ? strictestCeiling([may.ceiling, may.startEffort]) : 'none';
	}
	const evaluation = evaluate(currentRuleset, person(change));
	if (!('ceiling' in evaluation)) throw new RangeError(`no outcome for row ${row.row}`);
	return strictestCeiling([evaluation.ceiling, evaluation.startEffort]);
}

test('the table has its 25 rows', () => {
	expect(acsmTable).toHaveLength(25);
	expect(Object.keys(nineSigns)).toHaveLength(9);
});

describe('never looser than ACSM 2015', () => {
	test.each(acsmTable)(
		'row $row: regular $regular, disease $disease, signs $signs, wants $wanted: at most $most',
		(row) => {
			for (const change of peopleOf(row)) {
				expect(opennessOf(mostEffort(row, change)), JSON.stringify(change)).toBeLessThanOrEqual(
					opennessOf(row.most)
				);
			}
		}
	);
});

describe('and not closed where ACSM is open, unless we say why', () => {
	const open = acsmTable.filter(({ most }) => most !== 'none');

	test.each(open)('row $row opens at least to moderate', (row) => {
		for (const change of peopleOf(row)) {
			// Kidney disease asks first even when active: our questions do not cover it.
			if ((change['cond.list'] as string[] | undefined)?.includes('kidney')) continue;
			expect(opennessOf(mostEffort(row, change)), JSON.stringify(change)).toBeGreaterThanOrEqual(
				opennessOf('moderate')
			);
		}
	});

	test('row 15: active, nothing flagged, wants vigorous: vigorous', () => {
		const row = acsmTable.find((one) => one.row === '15') as AcsmRow;
		for (const change of peopleOf(row)) expect(mostEffort(row, change)).toBe('vigorous');
	});

	test('row 24b: cleared before, an active person with a disease may run again', () => {
		const row = acsmTable.find((one) => one.row === '24b') as AcsmRow;
		for (const change of peopleOf(row)) {
			const result = resultOf(change);
			expect(access(asked(result, { advice: [adviceOf(result.reasons)] }))).toMatchObject({
				allowed: true,
				run: true,
				startEffort: 'moderate'
			});
		}
	});
});

describe('whoever has a sign is told to stop', () => {
	test.each(Object.entries(nineSigns))('%s', (_, answers) => {
		for (const sign of answers) {
			expect(evaluate(currentRuleset, person(sign))).toMatchObject({
				status: 'SEEK_ADVICE',
				stopCurrent: true
			});
		}
	});
});
