import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as edits from '$lib/outing/edit/edits.ts';
import { move, step } from '$lib/outing/edit/move.ts';
import { at, phaseAt, placesOf, type Place } from '$lib/outing/edit/place.ts';
import { isRepeated, type Outing, type OutingPart } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { outingTotals } from '$lib/outing/totals.ts';
import { anyOuting, anyPhase } from '../any-outing.ts';

const part = (index: number): Place => ({ part: index, phase: null });
const inside = (index: number, phase: number): Place => ({ part: index, phase });
const ofSeconds = (seconds: number) => plainPhase('brisk-walk', seconds);
const [a, b, c, d] = [ofSeconds(10), ofSeconds(20), ofSeconds(30), ofSeconds(40)] as const;
const outing = (...parts: OutingPart[]): Outing => ({ name: 'One', parts });
/** Lengths of the phases, those of a repeat in a list. */
const shape = ({ parts }: Outing) =>
	parts.map((one) => (isRepeated(one) ? one.phases.map(({ seconds }) => seconds) : one.seconds));
const repeat = { times: 3, phases: [b, c] };

describe('places', () => {
	test('are those of every phase, once, in order', () => {
		expect(placesOf(outing(a, repeat, d))).toEqual([part(0), inside(1, 0), inside(1, 1), part(2)]);
	});

	test.each([part(-1), part(3), part(0.5), inside(0, 0), inside(1, 2)])(
		'outside the outing are a mistake of the caller: %j',
		(place) => {
			expect(() => at(outing(a, repeat, d), place)).toThrow(RangeError);
			expect(() => edits.remove(outing(a, repeat, d), place)).toThrow(RangeError);
		}
	);

	test('of a repeat is not that of a phase', () => {
		expect(() => phaseAt(outing(repeat), part(0))).toThrow(RangeError);
	});
});

describe('each edit', () => {
	test('adds in front of a place, at the end and inside a repeat too', () => {
		expect(shape(edits.add(outing(a, repeat), part(1), d))).toEqual([10, 40, [20, 30]]);
		expect(shape(edits.add(outing(a, repeat), part(2), d))).toEqual([10, [20, 30], 40]);
		expect(shape(edits.add(outing(a, repeat), inside(1, 2), d))).toEqual([10, [20, 30, 40]]);
	});

	test('never puts a repeat into a repeat', () => {
		expect(() => edits.add(outing(repeat), inside(0, 0), repeat)).toThrow(RangeError);
		expect(() => move(outing(repeat, repeat), part(0), inside(1, 0))).toThrow(RangeError);
		expect(() => move(outing(repeat), part(0), inside(0, 1))).toThrow(RangeError);
		expect(() => edits.wrap(outing(a, repeat), 0, 1, 2)).toThrow(RangeError);
	});

	test('takes a repeat away with its last phase', () => {
		expect(shape(edits.remove(outing(a, { times: 2, phases: [b] }), inside(1, 0)))).toEqual([10]);
	});

	test('doubles a phase or a repeat right behind it', () => {
		expect(shape(edits.duplicate(outing(a, repeat), part(1)))).toEqual([10, [20, 30], [20, 30]]);
		expect(shape(edits.duplicate(outing(a, repeat), inside(1, 0)))).toEqual([10, [20, 20, 30]]);
	});

	test('drops what was meant for another kind when the kind changes, and only then', () => {
		const quick = { ...a, speedKmh: 6, target: { low: 0.4, high: 0.5 }, cue: 'Along the wall' };
		const asRun = edits.change(outing(quick), part(0), { kind: 'steady-run', inclinePercent: 1 });
		expect(asRun.parts[0]).toEqual({
			...plainPhase('steady-run', 10),
			inclinePercent: 1,
			cue: 'Along the wall'
		});
		const longer = edits.change(outing(quick), part(0), { kind: 'brisk-walk', seconds: 15 });
		expect(longer.parts[0]).toEqual({ ...quick, seconds: 15 });
	});

	test('writes a repeat out, each phase as often as it is done', () => {
		expect(shape(edits.writeOut(outing(a, repeat), 1))).toEqual([10, 20, 30, 20, 30, 20, 30]);
		expect(shape(edits.changeTimes(outing(repeat), 0, 2))).toEqual([[20, 30]]);
		expect(() => edits.unwrap(outing(a), 0)).toThrow(RangeError);
	});

	test('leaves the outing before it as it was, and untouched parts the same objects', () => {
		const before = outing(a, repeat, d);
		const after = edits.change(before, part(0), { seconds: 15 });
		expect(shape(before)).toEqual([10, [20, 30], 40]);
		expect(after.parts[1]).toBe(repeat);
	});
});

describe('a move', () => {
	test.each<[Place, Place, (number | number[])[], Place]>([
		[part(0), part(3), [[20, 30], 40, 10], part(2)],
		[part(2), part(0), [40, 10, [20, 30]], part(0)],
		[part(0), part(0), [10, [20, 30], 40], part(0)],
		[part(0), part(1), [10, [20, 30], 40], part(0)],
		[part(0), inside(1, 1), [[20, 10, 30], 40], inside(0, 1)],
		[part(2), inside(1, 2), [10, [20, 30, 40]], inside(1, 2)],
		[inside(1, 0), inside(1, 2), [10, [30, 20], 40], inside(1, 1)],
		[inside(1, 1), inside(1, 0), [10, [30, 20], 40], inside(1, 0)],
		[inside(1, 0), part(0), [20, 10, [30], 40], part(0)],
		[inside(1, 0), part(3), [10, [30], 40, 20], part(3)]
	])('from %j to %j', (from, to, expected, place) => {
		const moved = move(outing(a, repeat, d), from, to);
		expect(shape(moved.outing)).toEqual(expected);
		expect(moved.place).toEqual(place);
	});

	test('of the last phase out of a repeat takes the repeat away', () => {
		const alone = outing({ times: 2, phases: [a] }, d);
		expect(move(alone, inside(0, 0), part(2))).toEqual({ outing: outing(d, a), place: part(1) });
		expect(move(alone, inside(0, 0), part(0))).toEqual({ outing: outing(a, d), place: part(0) });
		expect(move(alone, inside(0, 0), inside(0, 1)).outing).toEqual(alone);
	});

	test('step by step leads a phase through a whole outing and back, in and out of repeats', () => {
		const seen = [outing(a, repeat, d)];
		let place: Place | null = part(0);
		const places = [place];
		for (let next = step(seen[0]!, place, 'down'); next; next = step(next.outing, place, 'down')) {
			seen.push(next.outing);
			place = next.place;
			places.push(place);
		}
		expect(seen.map(shape)).toEqual([
			[10, [20, 30], 40],
			[[10, 20, 30], 40],
			[[20, 10, 30], 40],
			[[20, 30, 10], 40],
			[[20, 30], 10, 40],
			[[20, 30], 40, 10]
		]);
		const back: Outing[] = [];
		for (let now = seen.at(-1)!; ;) {
			const next = step(now, place, 'up');
			if (next === null) break;
			[now, place] = [next.outing, next.place];
			back.push(now);
		}
		expect(back).toEqual(seen.slice(0, -1).reverse());
		expect(place).toEqual(part(0));
	});
});

describe('for every outing', () => {
	const outingAndPlace = anyOuting.chain((any) =>
		fc.record({ any: fc.constant(any), place: fc.constantFrom(...placesOf(any)), phase: anyPhase })
	);

	test('what is added and removed again leaves the outing as it was', () => {
		fc.assert(
			fc.property(outingAndPlace, ({ any, place, phase }) => {
				expect(edits.remove(edits.add(any, place, phase), place)).toEqual(any);
			})
		);
	});

	test('unwrapping undoes wrapping', () => {
		fc.assert(
			fc.property(anyOuting, (any) => {
				fc.pre(!isRepeated(any.parts[0]!));
				expect(edits.unwrap(edits.wrap(any, 0, 0, 3), 0)).toEqual(any);
			})
		);
	});

	test('writing out changes neither the phases nor what they add up to', () => {
		fc.assert(
			fc.property(anyOuting, (any) => {
				const index = any.parts.findIndex(isRepeated);
				fc.pre(index >= 0);
				expect(outingTotals(edits.writeOut(any, index))).toEqual(outingTotals(any));
			})
		);
	});

	test('what is moved stands where the move says, and nothing is lost', () => {
		fc.assert(
			fc.property(outingAndPlace, fc.constantFrom('up', 'down'), ({ any, place }, way) => {
				const moved = step(any, place, way);
				fc.pre(moved !== null);
				expect(at(moved.outing, moved.place)).toEqual(at(any, place));
				expect(placesOf(moved.outing)).toHaveLength(placesOf(any).length);
			})
		);
	});
});
