import { describe, expect, test } from 'vitest';
import { access, type AccessInput } from '$lib/screening/access.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { Advice, Answers, ScreeningResult } from '$lib/screening/types.ts';
import { accessCases, type AccessCase } from './access-cases.ts';
import { adviceOf, asked, eventOn, inactive, resultOf, steadyHeart } from './people.ts';

const soreKnee: Answers = { 'joint.sore': 'yes', 'joint.now': ['limits'] };
const highPressure: Answers = { 'bp.told': 'yes', 'bp.hard': 'no', 'bp.last': 'over' };
const over45: Answers = { ...inactive, 'age.years': 52 };
const swollenAnkles: Answers = { 'signs.other': ['ankles'] };
const ill: Answers = { 'ill.today': 'yes' };
const betaBlocker: Answers = { 'meds.rate': 'yes', 'meds.why': 'minor' };

/** Answers that lead to the reasons of a case and to nothing else that matters for it. */
const answersFor: Readonly<Record<string, Answers>> = {
	'': {},
	'R-JOINT': soreKnee,
	'R-JOINT R-BP-HIGH': { ...soreKnee, ...highPressure },
	'R-CMR-ACTIVE': steadyHeart,
	'R-ILL': ill
};

function inputOf({ result, advice, now, currentMajor, illToday }: AccessCase): AccessInput {
	const stored = result && {
		...resultOf(answersFor[result.reasons.join(' ')]),
		status: result.status,
		completedOn: result.completedOn,
		completedAt: noonOn(result.completedOn, result.timeZone),
		timeZone: result.timeZone,
		rulesetVersion: `${result.major}.0.0`,
		invalidatedAt: result.invalidated ? Date.parse(now) : null
	};
	return asked(stored, {
		consentGiven: result?.consent ?? true,
		advice: advice ? [adviceOf(advice.covers, advice)] : [],
		now: Date.parse(now),
		timeZone: result?.timeZone ?? 'Europe/Dublin',
		currentRuleset: { ...currentRuleset, version: `${currentMajor}.0.0` },
		illToday
	});
}

function noonOn(date: string, timeZone: string): number {
	// Noon in Dublin in winter is noon in UTC; Los Angeles is eight hours behind.
	return Date.parse(`${date}T${timeZone === 'America/Los_Angeles' ? '20' : '12'}:00:00Z`);
}

function codeOf(input: AccessInput): string {
	const may = access(input);
	return may.allowed ? may.status : may.code;
}

describe('date and advice cases', () => {
	test.each(accessCases)('$title', (accessCase) => {
		const may = access(inputOf(accessCase));
		expect(may.allowed).toBe(accessCase.expected.allowed);
		expect(may.allowed ? may.status : may.code).toBe(accessCase.expected.code);
	});

	test.each(accessCases.filter(({ result }) => result))('$title: its reasons are real', (one) => {
		expect(inputOf(one).result?.reasons).toEqual(expect.arrayContaining([...one.result!.reasons]));
	});
});

describe('nothing to go by', () => {
	test('no result carries no number and no reason', () => {
		expect(access(asked(null))).toEqual({
			allowed: false,
			code: 'NO_RESULT',
			reasons: [],
			coveredReasons: [],
			urgent: false,
			stopCurrent: false,
			liftable: [],
			closedByAdvice: []
		});
	});

	test.each([
		['an empty input', {}],
		['nothing', undefined],
		['a zone that does not exist', asked(resultOf(), { timeZone: 'Europe/Atlantis' })],
		['a moment that does not exist', asked(resultOf(), { now: Number.NaN })],
		['advice that is no list', asked(resultOf(), { advice: null as never })],
		['events that are no list', asked(resultOf(), { events: undefined as never })],
		[
			'a date of being well that does not exist',
			asked(resultOf(ill), { wellAgainOn: '2026-13-01' })
		]
	])('%s closes and does not throw', (_, input) => {
		expect(access(input as AccessInput).allowed).toBe(false);
	});

	test.each([undefined, 1, 'true'])('consent of %s is not consent', (consent) => {
		expect(codeOf(asked(resultOf(), { consentGiven: consent as never }))).toBe('NO_RESULT');
	});
});

describe('an open gate', () => {
	test('gives what the rules gave', () => {
		expect(access(asked(resultOf({ ...betaBlocker, 'age.years': 44 })))).toEqual({
			allowed: true,
			status: 'CLEARED_ALL',
			run: true,
			ceiling: 'vigorous',
			startEffort: 'vigorous',
			pulse: { on: false, reasons: ['H-MEDS'], careTeamLimitBpm: null },
			reasons: ['H-MEDS', 'A-HEAT'],
			coveredReasons: [],
			liftable: [{ reason: 'H-MEDS', roles: [], countsFrom: null }],
			advice: ['A-HEAT'],
			validUntil: '2027-11-23',
			resultUntil: '2027-11-23',
			startedOn: '2026-11-24',
			ageYears: 44,
			plan: 'walkrun',
			walkOnlyByAdvice: false,
			walkOnlyByPain: false
		});
	});

	test('whoever plans to walk only does not run', () => {
		expect(access(asked(resultOf({ 'plan.effort': 'walk' })))).toMatchObject({
			status: 'CLEARED_ALL',
			run: false,
			ceiling: 'moderate'
		});
	});

	test('may walk names who could open the rest', () => {
		expect(access(asked(resultOf(over45)))).toMatchObject({
			status: 'CLEARED_WALK',
			run: false,
			ceiling: 'moderate',
			startEffort: 'moderate',
			liftable: [{ reason: 'R-AGE-45', roles: expect.arrayContaining(['exercise-professional']) }]
		});
	});
});

describe('a closed gate', () => {
	test('says what remains, who may cover it, and whether it is urgent', () => {
		expect(access(asked(resultOf({ ...soreKnee, 'chest.pain': ['rest'] })))).toMatchObject({
			code: 'SEEK_ADVICE',
			reasons: ['R-CHEST-REST', 'R-JOINT'],
			urgent: true,
			stopCurrent: true,
			liftable: [
				{ reason: 'R-CHEST-REST', roles: ['doctor'] },
				{ reason: 'R-JOINT', roles: ['doctor', 'physiotherapist'] }
			]
		});
	});

	test('nobody can cover not today', () => {
		expect(access(asked(resultOf(ill)))).toMatchObject({
			code: 'WAIT',
			liftable: [{ reason: 'R-ILL', roles: [] }]
		});
	});
});

describe('a stored result counts', () => {
	const on = (day: string) => ({ now: Date.parse(`${day}T12:00:00Z`) });

	test.each([
		['2026-11-23', 'EXPIRED'],
		['2026-11-24', 'CLEARED_ALL'],
		['2027-11-23', 'CLEARED_ALL'],
		['2027-11-24', 'EXPIRED']
	])('on %s: %s', (day, code) => {
		expect(codeOf(asked(resultOf(), on(day)))).toBe(code);
	});

	test('by the calendar of where the runner is', () => {
		const lateEvening = { now: Date.parse('2027-11-24T05:00:00Z') };
		const inLosAngeles = { ...lateEvening, timeZone: 'America/Los_Angeles' };
		expect(codeOf(asked(resultOf(), inLosAngeles))).toBe('CLEARED_ALL');
		expect(codeOf(asked(resultOf(), lateEvening))).toBe('EXPIRED');
	});

	test.each<[string, Partial<ScreeningResult>]>([
		['a rule set that was never published', { rulesetId: '1999-01' }],
		['an older major version', { rulesetVersion: '0.9.0' }],
		['a version that is none', { rulesetVersion: 'one' }],
		['health that changed', { invalidatedAt: 0 }],
		['a reason that no rule has', { reasons: ['R-MADE-UP'] }],
		['a status milder than its reasons', { reasons: ['R-FAINT'] }],
		['a status stricter than its reasons', { status: 'SEEK_ADVICE' }],
		['a status that no rule gives', { status: 'CLEARED' as never }],
		['an event among its answers', { status: 'SEEK_ADVICE', reasons: ['R-EVENT'] }],
		['a resting pulse among its answers', { reasons: ['H-REST'] }],
		['a date that does not exist', { completedOn: '2026-02-30' }],
		['a date that is not the day of its moment', { completedOn: '2026-11-25' }],
		['a moment that does not exist', { completedAt: Number.NaN }],
		['a zone that does not exist', { timeZone: 'Mars/Olympus' }],
		['a plan that does not exist', { plan: 'sprint' as never }],
		['an activity that was lost', { activity: true as never }],
		['an age under 18', { ageYears: 17 }],
		['an age that is not whole', { ageYears: 34.5 }],
		['an age at which its rules would say more', { ageYears: 46, activity: hardly() }],
		['an activity at which its rules would say more', { activity: hardly() }],
		[
			'a harder plan put in later',
			{ ...resultOf({ ...over45, 'plan.effort': 'walk' }), plan: 'hard' }
		]
	])('not with %s', (_, part) => {
		expect(codeOf(asked({ ...resultOf(), ...part }))).toBe('RESCREEN');
	});

	function hardly(): ScreeningResult['activity'] {
		return { days: 1, minutes: 20, months: 'lt3', hard: 'no' };
	}

	test('with the facts that its rules fit', () => {
		expect(codeOf(asked({ ...resultOf(), ageYears: 45 }))).toBe('CLEARED_ALL');
	});

	test('after a minor change of the rule set', () => {
		const newer = { ...currentRuleset, version: '1.4.2' };
		expect(codeOf(asked(resultOf(), { currentRuleset: newer }))).toBe('CLEARED_ALL');
	});
});

describe('advice', () => {
	const may = (change: Answers, advice: readonly Advice[], more: Partial<AccessInput> = {}) =>
		access(asked(resultOf(change), { advice, ...more }));

	test('takes covered reasons away, and the strictest of the rest decides', () => {
		const both = { ...over45, ...soreKnee };
		expect(may(both, [adviceOf(['R-JOINT'])])).toMatchObject({
			status: 'CLEARED_WALK',
			coveredReasons: ['R-JOINT'],
			reasons: ['R-AGE-45', 'S-INACTIVE']
		});
		expect(may(both, [adviceOf(['R-AGE-45'])])).toMatchObject({
			code: 'SEEK_ADVICE',
			reasons: ['R-JOINT'],
			coveredReasons: ['R-AGE-45']
		});
		expect(may(both, [adviceOf(['R-JOINT', 'R-AGE-45'])])).toMatchObject({
			status: 'CLEARED_ALL',
			run: true
		});
	});

	test.each([
		['the day it was given', '2026-12-01', true],
		['the day before', '2026-12-02', false],
		['its last day', '2025-12-02', true],
		['the day after its last', '2025-12-01', false],
		['a day that does not exist', '2026-11-31', false]
	])('counts on %s: %s %s', (_, givenOn, allowed) => {
		expect(may(highPressure, [adviceOf(['R-BP-HIGH'], { givenOn })]).allowed).toBe(allowed);
	});

	test('about a sign counts from the day of the answers on', () => {
		const given = (givenOn: string) =>
			may(swollenAnkles, [adviceOf(['R-SIGN-ANKLES'], { givenOn })]);
		expect(given('2026-11-24').allowed).toBe(true);
		expect(given('2026-11-23').allowed).toBe(false);
	});

	test('counts only from somebody who may cover the reason', () => {
		const by = (role: Advice['role']) => may(soreKnee, [adviceOf(['R-JOINT'], { role })]).allowed;
		expect(by('physiotherapist')).toBe(true);
		expect(by('nurse')).toBe(false);
		expect(by('stranger' as never)).toBe(false);
	});

	test('after a sign begins at moderate, whatever it allows', () => {
		expect(may(swollenAnkles, [adviceOf(['R-SIGN-ANKLES'])])).toMatchObject({
			run: true,
			ceiling: 'vigorous',
			startEffort: 'moderate'
		});
	});

	test.each([
		['walk', 'CLEARED_WALK', false, 'moderate', 'walk'],
		['walkrun', 'CLEARED_ALL', true, 'vigorous', 'walkrun'],
		['all', 'CLEARED_ALL', true, 'vigorous', 'hard']
	] as const)('of scope %s opens %s', (scope, status, run, ceiling, plan) => {
		const hard = { ...soreKnee, 'plan.effort': 'hard' };
		expect(may(hard, [adviceOf(['R-JOINT'], { scope })])).toMatchObject({
			status,
			run,
			ceiling,
			plan
		});
	});

	test('never opens more than the plan', () => {
		const walker = { ...soreKnee, 'plan.effort': 'walk' };
		expect(may(walker, [adviceOf(['R-JOINT'])])).toMatchObject({
			run: false,
			ceiling: 'moderate',
			plan: 'walk'
		});
	});

	test('of several the strictest sets the scope', () => {
		const both = { ...soreKnee, ...highPressure };
		const knee = adviceOf(['R-JOINT'], { scope: 'walk', role: 'physiotherapist' });
		const pressure = adviceOf(['R-BP-HIGH'], { role: 'nurse' });
		expect(may(both, [knee, pressure])).toMatchObject({ status: 'CLEARED_WALK' });
		expect(may(both, [adviceOf(['R-JOINT']), pressure])).toMatchObject({ status: 'CLEARED_ALL' });
	});

	test('that says walking only holds, whatever it was about, until it is removed or runs out', () => {
		const walk = adviceOf([], { scope: 'walk' });
		expect(may({}, [walk])).toMatchObject({
			status: 'CLEARED_WALK',
			run: false,
			walkOnlyByAdvice: true
		});
		expect(may({}, [{ ...walk, givenOn: '2025-12-01' }])).toMatchObject({ run: true });
	});

	test('about an injury or an operation is about that one: older advice says nothing of it', () => {
		const before = { givenOn: '2026-11-23' };
		const operation = { 'recent.event': ['surgery'] };
		expect(may(soreKnee, [adviceOf(['R-JOINT'], before)]).allowed).toBe(false);
		expect(may(operation, [adviceOf(['R-RECENT'], before)]).allowed).toBe(false);
		expect(may(operation, [adviceOf(['R-RECENT'])]).allowed).toBe(true);
	});

	test('from before health changed says nothing of what came after, but for age', () => {
		const changed = { changedOn: '2026-11-20' };
		const older = { givenOn: '2026-11-19' };
		const asks = (change: Answers, reason: string, more = {}) =>
			access(asked(resultOf(change), { ...changed, advice: [adviceOf([reason], more)] }));
		expect(asks(highPressure, 'R-BP-HIGH', older).allowed).toBe(false);
		expect(asks(highPressure, 'R-BP-HIGH', { givenOn: '2026-11-20' }).allowed).toBe(true);
		expect(asks(over45, 'R-AGE-45', older)).toMatchObject({ status: 'CLEARED_ALL' });
	});

	test('that says nothing yet lifts nothing, closes, and says which one it was', () => {
		const no = adviceOf(['R-JOINT'], { id: 'no', scope: 'none' });
		expect(may({}, [no])).toMatchObject({
			code: 'SEEK_ADVICE',
			reasons: [],
			closedByAdvice: ['no']
		});
		expect(may(soreKnee, [no, adviceOf(['R-JOINT'])])).toMatchObject({
			code: 'SEEK_ADVICE',
			coveredReasons: ['R-JOINT'],
			closedByAdvice: ['no']
		});
		expect(may({}, [{ ...no, givenOn: '2025-12-02' }])).toMatchObject({ allowed: false });
		expect(may({}, [{ ...no, givenOn: '2025-12-01' }])).toMatchObject({ allowed: true });
		expect(may({}, [{ ...no, givenOn: 'last week' }])).toMatchObject({ allowed: false });
	});

	test('of a scope that does not exist closes', () => {
		expect(may(soreKnee, [adviceOf(['R-JOINT'], { scope: 'everything' as never })]).allowed).toBe(
			false
		);
	});

	test('ends the gate early when it runs out before the result', () => {
		const early = adviceOf(['R-BP-HIGH'], { givenOn: '2026-03-10' });
		expect(may(highPressure, [early])).toMatchObject({
			validUntil: '2027-03-09',
			resultUntil: '2027-11-23'
		});
		expect(may({}, [early])).toMatchObject({ validUntil: '2027-11-23' });
	});

	test('never lifts not today, an emergency, an ended result, or a missing one', () => {
		const everything = adviceOf(currentRuleset.rules.map(({ id }) => id));
		const advice = [everything];
		expect(may(ill, advice)).toMatchObject({ code: 'WAIT' });
		expect(codeOf(asked(resultOf({ 'now.urgent': ['chest'] }), { advice }))).toBe('EMERGENCY');
		expect(codeOf(asked(null, { advice }))).toBe('NO_RESULT');
		const later = { advice, now: Date.parse('2027-11-24T12:00:00Z') };
		expect(codeOf(asked(resultOf(), later))).toBe('EXPIRED');
	});

	test('never turns pulse on', () => {
		const heart = { ...steadyHeart, ...betaBlocker, 'meds.why': 'told' };
		const all = adviceOf([...resultOf(heart).reasons], { limitBpm: 118 });
		expect(may(heart, [all])).toMatchObject({
			status: 'CLEARED_ALL',
			coveredReasons: ['R-CMR-ACTIVE'],
			pulse: { on: false, reasons: ['H-MEDS', 'H-HEART'], careTeamLimitBpm: 118 }
		});
	});
});

describe('a limit in beats from the care team', () => {
	const limit = (...advice: readonly Advice[]) => {
		const may = access(asked(resultOf(betaBlocker), { advice }));
		return may.allowed ? may.pulse.careTeamLimitBpm : may.code;
	};
	const says = (limitBpm: number | null, more: Partial<Advice> = {}) =>
		adviceOf([], { limitBpm, ...more });

	test.each<[string, readonly Advice[], number | null]>([
		['none was set', [], null],
		['the newest that names one', [says(130, { givenOn: '2026-10-01' }), says(120)], 120],
		[
			'an older one while newer advice names none',
			[says(130, { givenOn: '2026-10-01' }), says(null)],
			130
		],
		['the lower of one day', [says(120), says(115)], 115],
		['a nurse may set it', [says(120, { role: 'nurse' })], 120],
		['a physiotherapist may not', [says(120, { role: 'physiotherapist' })], null],
		['not from the future', [says(120, { givenOn: '2027-01-01' })], null],
		['not after a year', [says(120, { givenOn: '2025-11-30' })], null]
	])('%s', (_, advice, expected) => {
		expect(limit(...advice)).toBe(expected);
		expect(limit(...[...advice].reverse())).toBe(expected);
	});

	test('holds with pulse on as well', () => {
		expect(access(asked(resultOf(), { advice: [says(140)] }))).toMatchObject({
			pulse: { on: true, careTeamLimitBpm: 140 }
		});
	});
});

describe('an urgent sign outlives its form', () => {
	const event = eventOn('2026-11-26');
	const code = (more: Partial<AccessInput>, change: Answers = {}) =>
		codeOf(asked(resultOf(change), { events: [event], ...more }));

	test('it asks a doctor first, today, and stops exercise', () => {
		expect(access(asked(resultOf(), { events: [event] }))).toMatchObject({
			code: 'SEEK_ADVICE',
			reasons: ['R-EVENT'],
			urgent: true,
			stopCurrent: true,
			liftable: [{ reason: 'R-EVENT', roles: ['doctor'] }]
		});
	});

	test('answering again does not lift it', () => {
		const newer = resultOf(
			{},
			{ completedOn: '2026-11-30', completedAt: Date.parse('2026-11-30T12:00:00Z') }
		);
		expect(codeOf(asked(newer, { events: [event] }))).toBe('SEEK_ADVICE');
	});

	test.each<[string, Partial<Advice>, string]>([
		['a doctor on the day', { givenOn: '2026-11-26' }, 'CLEARED_ALL'],
		['a doctor later', { givenOn: '2026-11-29' }, 'CLEARED_ALL'],
		['a doctor the day before', { givenOn: '2026-11-25' }, 'SEEK_ADVICE'],
		['a nurse', { role: 'nurse' }, 'SEEK_ADVICE'],
		['a doctor about something else', { covers: ['R-JOINT'] }, 'SEEK_ADVICE'],
		['a doctor who says nothing yet', { scope: 'none' }, 'SEEK_ADVICE']
	])('%s', (_, more, expected) => {
		expect(code({ advice: [adviceOf(['R-EVENT'], more)] })).toBe(expected);
	});

	test('each of two events needs advice of its own day or later', () => {
		const events = [event, eventOn('2026-11-30')];
		const given = (givenOn: string) => [adviceOf(['R-EVENT'], { givenOn })];
		expect(code({ events, advice: given('2026-11-27') })).toBe('SEEK_ADVICE');
		expect(access(asked(resultOf(), { events, advice: given('2026-11-27') }))).toMatchObject({
			reasons: ['R-EVENT'],
			coveredReasons: []
		});
		expect(code({ events, advice: given('2026-11-30') })).toBe('CLEARED_ALL');
	});

	test.each([
		['at once', 0, 'CLEARED_ALL'],
		['after ten minutes', 600_000, 'CLEARED_ALL'],
		['a moment later than that', 600_001, 'SEEK_ADVICE'],
		['before it happened', -1, 'SEEK_ADVICE'],
		['at a time that cannot be read', Number.NaN, 'SEEK_ADVICE']
	])('taken back %s', (_, after, expected) => {
		const withdrawnAt = event.happenedAt + after;
		expect(code({ events: [{ ...event, withdrawnAt }] })).toBe(expected);
	});

	test('on a date that cannot be read it stays', () => {
		const events = [{ ...event, happenedOn: 'yesterday' }];
		expect(code({ events, advice: [adviceOf(['R-EVENT'])] })).toBe('SEEK_ADVICE');
	});

	test('goes before an ended or missing result, and leaves it once lifted', () => {
		const later = Date.parse('2027-11-24T12:00:00Z');
		const lifted = [adviceOf(['R-EVENT'], { givenOn: '2027-11-01' })];
		expect(code({ now: later })).toBe('SEEK_ADVICE');
		expect(code({ now: later, advice: lifted })).toBe('EXPIRED');
		expect(codeOf(asked(null, { events: [event] }))).toBe('SEEK_ADVICE');
		expect(codeOf(asked(null, { events: [event], consentGiven: false }))).toBe('NO_RESULT');
	});

	test('does not hide a stricter answer', () => {
		expect(code({}, { 'now.urgent': ['heart'] })).toBe('EMERGENCY');
	});
});

describe('not today ends', () => {
	const code = (wellAgainOn: string | null, change: Answers = ill) =>
		codeOf(asked(resultOf(change), { wellAgainOn }));

	test.each([
		[null, 'WAIT'],
		['2026-11-24', 'WAIT'],
		['2026-11-25', 'CLEARED_ALL'],
		['2026-12-01', 'CLEARED_ALL'],
		['2026-12-02', 'WAIT']
	])('well again on %s: %s', (wellAgainOn, expected) => {
		expect(code(wellAgainOn)).toBe(expected);
	});

	test('and nothing else does', () => {
		expect(code('2026-11-25', { ...ill, ...soreKnee })).toBe('SEEK_ADVICE');
		expect(code('2026-11-25', { 'ill.heart': 'yes' })).toBe('SEEK_ADVICE');
	});

	test('being ill today goes before being well today', () => {
		const input = asked(resultOf(), { illToday: true, wellAgainOn: '2026-12-01' });
		expect(codeOf(input)).toBe('WAIT');
	});
});

describe('a resting pulse out of range on two mornings', () => {
	const may = (advice: readonly Advice[] = []) =>
		access(asked(resultOf(), { restingAskFirstSince: '2026-11-26', advice }));

	test('turns pulse off, and names who can say more', () => {
		expect(may()).toMatchObject({
			status: 'CLEARED_ALL',
			run: true,
			reasons: ['H-REST'],
			pulse: { on: false, reasons: ['H-REST'] },
			liftable: [{ reason: 'H-REST', roles: ['doctor', 'nurse'] }]
		});
	});

	test('until a doctor or nurse covered it', () => {
		expect(may([adviceOf(['H-REST'], { role: 'nurse' })])).toMatchObject({
			pulse: { on: true },
			coveredReasons: ['H-REST']
		});
		expect(may([adviceOf(['H-REST'], { role: 'pharmacist' })])).toMatchObject({
			pulse: { on: false }
		});
	});

	test('not known counts as out of range', () => {
		const input = asked(resultOf(), { restingAskFirstSince: undefined as never });
		expect(access(input)).toMatchObject({ pulse: { on: false } });
	});
});

test('nothing that goes in is changed', () => {
	const frozen = <Value extends object>(value: Value): Value => {
		Object.values(value).forEach((part) => typeof part === 'object' && part && frozen(part));
		return Object.freeze(value);
	};
	const input = frozen(
		asked(frozen(resultOf({ ...over45, ...soreKnee })), {
			advice: [adviceOf(['R-JOINT'])],
			events: [eventOn('2026-11-26')]
		})
	);
	expect(() => access(input)).not.toThrow();
	expect(access(input)).toEqual(access(input));
});
