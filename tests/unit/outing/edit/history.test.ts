import fc from 'fast-check';
import { expect, test } from 'vitest';
import { beginHistory, edited, redone, undone, type History } from '$lib/outing/edit/history.ts';

test('with nothing done there is nothing to undo or to bring back', () => {
	const history = beginHistory('a');
	expect(undone(history)).toBe(history);
	expect(redone(history)).toBe(history);
});

test('what changes nothing is no edit', () => {
	const history = edited(beginHistory('a'), 'b');
	expect(edited(history, 'b')).toBe(history);
});

test('one stroke is undone at once, two are not', () => {
	let history: History<number> = beginHistory(0);
	for (const seconds of [55, 60, 65]) history = edited(history, seconds, 'seconds of phase 1');
	history = edited(history, 70, 'seconds of phase 2');
	expect(undone(history).now).toBe(65);
	expect(undone(undone(history)).now).toBe(0);
});

test('a stroke does not go on after an undo', () => {
	const dragged = edited(beginHistory(0), 1, 'drag');
	const back = undone(edited(dragged, 2, 'other'));
	expect(undone(edited(back, 3, 'drag')).now).toBe(1);
});

test('a new edit forgets what could have been brought back', () => {
	expect(edited(undone(edited(beginHistory('a'), 'b')), 'c').future).toEqual([]);
});

test('as many redos as undos lead back to the same place', () => {
	fc.assert(
		fc.property(fc.array(fc.nat()), fc.nat({ max: 12 }), (edits, times) => {
			const history = edits.reduce((before, next) => edited(before, next), beginHistory(-1));
			let there = history;
			const possible = Math.min(times, history.past.length);
			for (let back = 0; back < possible; back++) there = undone(there);
			expect(there.now).toBe([...history.past, history.now].at(-1 - possible));
			for (let again = 0; again < possible; again++) there = redone(there);
			expect({ ...there, stroke: null }).toEqual({ ...history, stroke: null });
		})
	);
});

test('the oldest steps are forgotten after two hundred', () => {
	let history: History<number> = beginHistory(0);
	for (let edit = 1; edit <= 300; edit++) history = edited(history, edit);
	expect(history.past).toHaveLength(200);
	expect(history.past[0]).toBe(100);
});
