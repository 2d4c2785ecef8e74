import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { access, type Access, type AccessInput } from '$lib/screening/access.ts';
import { concluded } from '$lib/screening/concluded.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { OutcomeRule } from '$lib/screening/ruleset.ts';
import { opennessOf } from '$lib/screening/strictness.ts';
import type { Advice, HealthEvent, ScreeningResult } from '$lib/screening/types.ts';
import { nonsense, wholeForms } from './answer-sets.ts';
import { asked, eventOn } from './people.ts';

/*
 * Laws of the gate over invented people, advice and events. Common practice, no source: they are
 * what "advice lifts exactly what it covers" and "anything that does not fit closes" mean here.
 */

const RUNS = 4_000;
/** Where a test counts what the sample holds, the sample is always the same one. */
const counted = { seed: 20_261_125 };
const COMPLETED = '2026-06-10';
const results: fc.Arbitrary<ScreeningResult> = wholeForms
	.map((answers) => concluded(currentRuleset, answers))
	.filter((kept) => kept !== null)
	.map((kept) => ({
		...kept,
		id: 'result',
		completedAt: Date.parse(`${COMPLETED}T12:00:00Z`),
		completedOn: COMPLETED,
		timeZone: 'Europe/Dublin',
		invalidatedAt: null
	}));

/** Around the ends of everything: before and after the result, a year ago, today, tomorrow. */
const days = fc.constantFrom(
	'2025-12-01',
	'2025-12-02',
	'2026-06-09',
	'2026-06-10',
	'2026-09-01',
	'2026-12-01',
	'2026-12-02',
	'not a day'
);

function advices(covers: readonly string[], dates: fc.Arbitrary<string> = days) {
	return fc.array(
		fc.record<Advice>({
			id: fc.uuid(),
			givenOn: dates,
			role: fc.constantFrom(
				'doctor',
				'doctor',
				'nurse',
				'physiotherapist',
				'midwife',
				'pharmacist',
				'exercise-professional'
			),
			scope: fc.constantFrom('none', 'walk', 'walkrun', 'all', 'all', 'all'),
			covers: fc.oneof(
				fc.subarray([...covers, 'R-EVENT', 'H-REST']),
				fc.constant([...covers, 'R-EVENT'])
			),
			limitBpm: fc.constantFrom(null, 110, 130),
			recordedAt: fc.constant(0)
		}),
		{ maxLength: 4 }
	);
}

const events: fc.Arbitrary<readonly HealthEvent[]> = fc.array(
	fc
		.tuple(fc.constantFrom('2026-06-10', '2026-09-01', '2026-12-01'), fc.boolean())
		.map(([day, back]) => {
			const event = eventOn(day);
			return back ? { ...event, withdrawnAt: event.happenedAt + 1 } : event;
		}),
	{ maxLength: 2 }
);

const moments = fc.constantFrom(
	'2026-06-09T12:00:00Z',
	...Array.from({ length: 8 }, () => '2026-12-01T12:00:00Z'),
	'2027-06-10T12:00:00Z'
);

const inputs: fc.Arbitrary<AccessInput> = results
	.chain((result) =>
		fc.record({
			result: fc.constant(result),
			advice: advices(result.reasons),
			events,
			now: moments.map(Date.parse),
			wellAgainOn: fc.constantFrom(null, '2026-06-10', '2026-06-11', '2026-12-02'),
			restingAskFirstSince: fc.constantFrom(null, '2026-11-26'),
			changedOn: fc.constantFrom(null, '2026-06-01', '2026-11-27')
		})
	)
	.map(({ result, ...more }) => asked(result, more));

function law(check: (input: AccessInput) => boolean, sample: { seed?: number } = {}): void {
	fc.assert(fc.property(inputs, check), { numRuns: RUNS, ...sample });
}

/** How open a gate is, part by part: none of them may grow. */
function openness(may: Access): readonly number[] {
	if (!may.allowed) return [0, 0, 0, 0, 0];
	const { run, ceiling, startEffort, pulse } = may;
	return [1, Number(run), opennessOf(ceiling), opennessOf(startEffort), Number(pulse.on)];
}

function isNoMoreOpen(one: Access, other: Access): boolean {
	const limit = openness(other);
	return openness(one).every((part, at) => part <= (limit[at] ?? 0));
}

test('the sample holds open and closed gates, lifted and not', () => {
	const seen: Record<string, number> = {};
	law((input) => {
		const may = access(input);
		const name = `${may.allowed ? may.status : may.code} ${may.coveredReasons.length > 0}`;
		seen[name] = (seen[name] ?? 0) + 1;
		return true;
	}, counted);
	for (const name of [
		'CLEARED_ALL false',
		'CLEARED_ALL true',
		'CLEARED_WALK true',
		'SEEK_ADVICE true',
		'SEEK_ADVICE false',
		'WAIT false',
		'EMERGENCY false',
		'EXPIRED false'
	]) {
		expect(seen[name], name).toBeGreaterThanOrEqual(10);
	}
});

describe('advice', () => {
	test('never opens more than the plan', () => {
		law((input) => {
			const may = access(input);
			if (!may.allowed) return true;
			const planned = currentRuleset.planLimits[input.result!.plan];
			return (!may.run || planned.run) && opennessOf(may.ceiling) <= opennessOf(planned.ceiling);
		});
	});

	test('in any order says the same', () => {
		law((input) => {
			const reversed = { ...input, advice: [...input.advice].reverse() };
			const turned = { ...input, advice: [...input.advice.slice(1), ...input.advice.slice(0, 1)] };
			const plain = sorted(access(input));
			return sorted(access(reversed)) === plain && sorted(access(turned)) === plain;
		});
	});

	/** The list of advices that close follows the order of the advices; nothing else may. */
	function sorted(may: Access): string {
		return JSON.stringify(
			may.allowed ? may : { ...may, closedByAdvice: [...may.closedByAdvice].sort() }
		);
	}

	test('never turns pulse on where an answer turned it off', () => {
		law((input) => {
			const may = access(input);
			const isOff = input.result!.reasons.some((id) => id.startsWith('H-'));
			return !may.allowed || !isOff || !may.pulse.on;
		});
	});

	test('never opens what nothing but time, or answering again, can open', () => {
		law((input) => {
			const without = access({ ...input, advice: [] });
			if (without.allowed || without.code === 'SEEK_ADVICE') return true;
			return !access(input).allowed;
		});
	});

	test('lifts a reason only with an entitled, covering, opening advice of the right days', () => {
		const roles: Readonly<Record<string, readonly string[]>> = {
			symptom: ['doctor'],
			condition: ['doctor', 'nurse'],
			injury: ['doctor', 'physiotherapist'],
			pregnancy: ['doctor', 'midwife'],
			age: ['doctor', 'nurse', 'physiotherapist', 'midwife', 'exercise-professional']
		};
		law((input) => {
			const may = access(input);
			if (!may.allowed) return true;
			const asking = currentRuleset.rules.filter(
				(rule): rule is OutcomeRule =>
					rule.does === 'outcome' &&
					input.result!.reasons.includes(rule.id) &&
					(rule.outcome === 'SEEK_ADVICE' || may.run)
			);
			return asking.every(
				({ id, kind, outcome }) =>
					outcome === 'WAIT' ||
					input.advice.some(
						(advice) =>
							advice.scope !== 'none' &&
							advice.covers.includes(id) &&
							roles[kind]!.includes(advice.role) &&
							advice.givenOn > '2025-12-01' &&
							advice.givenOn <= '2026-12-01' &&
							(kind !== 'symptom' || advice.givenOn >= COMPLETED)
					)
			);
		});
	});

	test('that says nothing yet never opens anything', () => {
		law((input) => {
			const no: Advice = {
				id: 'no',
				givenOn: '2026-12-01',
				role: 'doctor',
				scope: 'none',
				covers: [...input.result!.reasons],
				limitBpm: null,
				recordedAt: 0
			};
			return !access({ ...input, advice: [...input.advice, no] }).allowed;
		});
	});
});

describe('an event', () => {
	test('never opens anything', () => {
		law((input) =>
			['2026-06-10', '2026-11-30', 'not a day'].every((happenedOn) => {
				const event = { ...eventOn('2026-11-30'), happenedOn };
				const after = access({ ...input, events: [...input.events, event] });
				return isNoMoreOpen(after, access(input));
			})
		);
	});

	test('of today closes, unless a doctor covered it today', () => {
		law((input) => {
			const event = eventOn('2026-12-01');
			const may = access({ ...input, events: [event] });
			const covered = input.advice.some(
				({ role, covers, givenOn }) =>
					role === 'doctor' && covers.includes('R-EVENT') && givenOn === '2026-12-01'
			);
			return covered || !may.allowed;
		});
	});
});

test('being ill, a resting pulse out of range, or no consent never opens anything', () => {
	law((input) => {
		const plain = access(input);
		return (
			isNoMoreOpen(access({ ...input, illToday: true }), plain) &&
			isNoMoreOpen(access({ ...input, restingAskFirstSince: '2026-11-30' }), plain) &&
			!access({ ...input, consentGiven: false }).allowed
		);
	});
});

test('an open gate holds until the day that it names, and no result counts after its own last', () => {
	const known = results.chain((result) =>
		advices(result.reasons, fc.constantFrom('2026-02-10', '2026-06-10', '2026-12-01')).map(
			(advice) => asked(result, { advice })
		)
	);
	fc.assert(
		fc.property(known, (input) => {
			const may = access(input);
			if (!may.allowed) return true;
			const at = (day: string) => access({ ...input, now: Date.parse(`${day}T12:00:00Z`) });
			const last = at(may.validUntil);
			const over = at('2027-06-10');
			return (
				may.resultUntil === '2027-06-09' &&
				JSON.stringify(openness(last)) === JSON.stringify(openness(may)) &&
				!over.allowed
			);
		}),
		{ numRuns: RUNS }
	);
});

test('nonsense in any place never throws, and in the place of a result never opens', () => {
	const names = ['result', 'consentGiven', 'events', 'advice', 'now', 'timeZone'] as const;
	fc.assert(
		fc.property(inputs, fc.constantFrom(...names), fc.constantFrom(...nonsense), (...parts) => {
			const [input, name, junk] = parts;
			const may = access({ ...input, [name]: junk });
			const isHarmless =
				(name === 'consentGiven' && junk === true) ||
				// A list without advice or events in it is a list.
				((name === 'advice' || name === 'events') && Array.isArray(junk)) ||
				name === 'now';
			return isHarmless || !may.allowed;
		}),
		{ numRuns: RUNS }
	);
});

test('nonsense inside a result never opens', () => {
	const names = [
		'rulesetId',
		'rulesetVersion',
		'status',
		'plan',
		'ageYears',
		'activity',
		'completedAt',
		'completedOn',
		'timeZone'
	] as const;
	fc.assert(
		fc.property(inputs, fc.constantFrom(...names), fc.constantFrom(...nonsense), (...parts) => {
			const [input, name, junk] = parts;
			return !access({ ...input, result: { ...input.result!, [name]: junk } as never }).allowed;
		}),
		{ numRuns: RUNS }
	);
});
