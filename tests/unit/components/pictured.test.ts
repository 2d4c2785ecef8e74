import { expect, test } from 'vitest';
import { pictured } from '$lib/components/outing-editor/pictured.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { courseWith } from '../guidance/expected/any-course.ts';

// Our own rules, no source. The slowest run costs 20.2 mL/kg/min (ACSM): more than 18.

const outing = {
	name: 'One',
	parts: [plainPhase('steady-run', 50), plainPhase('recovery-walk', 110)]
};
const none = { kind: 'no-course', why: 'pulse-off' } as const;
const [weak, strong] = [courseWith(18), courseWith(40)];
const kindOf = (...asked: Parameters<typeof pictured>) => pictured(...asked).pictured;

test('an outing without a phase has no picture, whoever is asked for', () => {
	const empty = { name: 'One', parts: [] };
	expect(kindOf([], null, empty)).toEqual({ kind: 'empty' });
	expect(kindOf([strong], strong, empty)).toEqual({ kind: 'empty' });
});

test('of a group it says whether nobody, nobody for now, or some can be drawn', () => {
	expect(kindOf([], null, outing)).toEqual({ kind: 'nobody' });
	expect(kindOf([none], null, outing)).toEqual({ kind: 'nobody' });
	expect(kindOf([none, weak, weak], null, outing)).toEqual({
		kind: 'too-much-for-all',
		runners: 2
	});
	expect(kindOf([none, weak, strong], null, outing)).toMatchObject({
		kind: 'group',
		runners: 2,
		tooMuch: 1
	});
});

test('of a runner it says whether there is a curve, an estimate, or neither', () => {
	expect(kindOf([strong], none, outing)).toEqual({ kind: 'not-this-runner' });
	expect(kindOf([strong], weak, outing)).toEqual({ kind: 'too-much-for-this-runner' });
	expect(kindOf([weak], strong, outing)).toMatchObject({ kind: 'runner' });
});

test('what to change is that of the group, whoever is drawn', () => {
	const long = { name: 'One', parts: [plainPhase('steady-run', 600)] };
	const courses = [courseWith(24), strong];
	const changes = [{ kind: 'run-too-long', misfits: 1, runners: 2 }];
	expect(pictured(courses, null, long).changes).toMatchObject(changes);
	expect(pictured(courses, strong, long).changes).toMatchObject(changes);
});
