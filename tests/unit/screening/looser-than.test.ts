import { describe, expect, test } from 'vitest';
import { asksWhatChanged, looserThan } from '$lib/screening/looser-than.ts';
import { resultOf } from './people.ts';

const open = resultOf();
const walk = resultOf({ 'age.years': 50, 'act.hard': 'no' });
const ill = resultOf({ 'ill.today': 'yes' });
const faint = resultOf({ 'faint.year': 'yes' });
const faintAndAnkles = resultOf({ 'faint.year': 'yes', 'signs.other': ['ankles'] });
const betaBlocker = resultOf({ 'meds.rate': 'yes', 'meds.why': 'minor' });
const older = resultOf({ 'age.years': 65 });

describe('a result is looser', () => {
	test.each([
		['with a milder status', open, faint, true],
		['with a milder status, ask first against not today', ill, faint, true],
		['not with a stricter one', faint, open, false],
		['not than itself', faint, faint, false],
		['with the same status and a reason gone', faint, faintAndAnkles, true],
		['not with the same status and a reason more', faintAndAnkles, faint, false],
		['with pulse on again', open, betaBlocker, true],
		['not for want of a care note', { ...open, reasons: [] }, older, false],
		['not with a stricter status, though a reason is gone', faint, walk, false],
		['than one whose rules nobody knows', open, { ...open, rulesetId: '1999-01' }, true]
	])('%s', (_, one, other, expected) => {
		expect(looserThan(one, other)).toBe(expected);
	});
});

describe('what changed is asked', () => {
	const after = (hours: number) => ({
		...open,
		completedAt: faint.completedAt + hours * 3_600_000
	});

	test.each([
		[0, true],
		[24, true],
		[24.001, false]
	])('%d hours after a stricter result: %s', (hours, expected) => {
		expect(asksWhatChanged(after(hours), faint)).toBe(expected);
	});

	test('never after a looser one', () => {
		expect(asksWhatChanged(faint, open)).toBe(false);
	});
});
