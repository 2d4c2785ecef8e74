import { describe, expect, test } from 'vitest';
import { isRepeated, type Outing } from '$lib/outing/outing.ts';
import { plainPhase } from '$lib/outing/plain-phase.ts';
import { placePresses, press, pressFrom } from '$lib/outing/press.ts';
import { usualOuting } from '$lib/outing/usual-outing.ts';

// Our own rules, no source.

const run = plainPhase('steady-run', 50);
const walk = plainPhase('recovery-walk', 110);
const cool = plainPhase('cool-down-walk', 360);
const outing: Outing = { name: 'One', parts: [run, walk, cool] };

const pressed = (value: string, on = outing) => {
	const found = pressFrom(value);
	if (found === null) throw new Error(`no press: ${value}`);
	return press(on, found);
};

describe('a button of the editor', () => {
	test.each(['', 'up', 'add', 'add hop', 'jump 1', 'up x', 'up 1.2.3', 'up -1', 'remove 1e9'])(
		'"%s" is none',
		(value) => expect(pressFrom(value)).toBeNull()
	);

	test('says again what it said', () => {
		expect(pressFrom('add steady-run')).toEqual({ does: 'add', kind: 'steady-run' });
		for (const does of placePresses) {
			expect(pressFrom(`${does} 2.1`)).toEqual({ does, place: { part: 2, phase: 1 } });
		}
	});

	test('adds in front of the cool-down walk, and a cool-down walk at the end', () => {
		expect(pressed('add steady-run')).toMatchObject({ place: { part: 2, phase: null } });
		expect(pressed('add steady-run').outing.parts.at(-1)).toBe(cool);
		expect(pressed('add cool-down-walk')).toMatchObject({ place: { part: 3, phase: null } });
		expect(pressed('add brisk-walk', { name: '', parts: [] }).outing.parts).toHaveLength(1);
	});

	test('moves a phase one step, and at the end nowhere', () => {
		expect(pressed('down 0')).toEqual({
			outing: { name: 'One', parts: [walk, run, cool] },
			place: { part: 1, phase: null }
		});
		expect(pressed('up 0')).toEqual({ outing, place: { part: 0, phase: null } });
	});

	test('repeats a run together with its recovery, and anything else alone', () => {
		const twice = pressed('repeat 0').outing;
		expect(twice.parts).toEqual([{ times: 2, phases: [run, walk] }, cool]);
		expect(pressed('repeat 2').outing.parts[2]).toEqual({ times: 2, phases: [cool] });
		expect(pressed('unwrap 0', twice).outing).toEqual(outing);
		expect(pressed('write-out 0', twice).outing.parts).toEqual([run, walk, run, walk, cool]);
		expect(pressed('remove 0', twice).outing.parts).toEqual([cool]);
		expect(pressed('copy 0.0', twice)).toMatchObject({ place: { part: 0, phase: 1 } });
	});

	test('refuses a place that is not there, however it came', () => {
		for (const does of placePresses) expect(() => pressed(`${does} 9`)).toThrow(RangeError);
		expect(() => pressed('remove 0.0')).toThrow(RangeError);
	});

	test('begins with an outing whose runs are uneven', () => {
		const runs = usualOuting('One').parts.flatMap((part) =>
			!isRepeated(part) && part.kind === 'steady-run' ? [part.seconds] : []
		);
		expect(new Set(runs).size).toBeGreaterThan(1);
	});
});
