import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandForm, effortForm, settingOf } from '$lib/forms/band-setting.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { isBandSetting } from '$lib/guidance/band-setting.ts';

// Our own rules, no source.

const typed = {
	phase: 'steady-run',
	lowPercent: '50',
	highPercent: '62',
	effortLow: '5',
	effortHigh: '6',
	runnerNote: ' As we  said. ',
	innerNote: ''
};

function read(changes: Record<string, string> = {}, schema: typeof bandForm = bandForm) {
	const form = new FormData();
	for (const [field, value] of Object.entries({ ...typed, ...changes })) form.append(field, value);
	return readForm(form, schema);
}

const issuesOf = (changes: Record<string, string>) => {
	const answer = read(changes);
	return answer.ok ? [] : answer.issues.map(({ field, code }) => `${field} ${code}`);
};

describe('a band as a coach types it', () => {
	test('is taken in per cent, with its notes tidied', () => {
		const answer = read();
		if (!answer.ok) throw new Error('it is fine');
		expect(answer.value).toMatchObject({ runnerNote: 'As we said.', innerNote: null });
		expect(settingOf(answer.value)).toEqual({
			lowFraction: 0.5,
			highFraction: 0.62,
			effortLow: 5,
			effortHigh: 6
		});
	});

	test('without a low edge it is anything under', () => {
		const answer = read({ lowPercent: '' });
		expect(answer.ok && settingOf(answer.value).lowFraction).toBeNull();
	});

	test.each([
		[{ highPercent: '' }, 'highPercent missing'],
		[{ highPercent: '45' }, 'highPercent under-low'],
		[{ highPercent: '54' }, 'highPercent too-narrow'],
		[{ lowPercent: '19' }, 'lowPercent too-low'],
		[{ highPercent: '101' }, 'highPercent too-high'],
		[{ highPercent: '60.5' }, 'highPercent not-whole'],
		[{ highPercent: 'sixty' }, 'highPercent not-a-number'],
		[{ effortHigh: '4' }, 'effortHigh under-low'],
		[{ effortLow: '0' }, 'effortLow too-low'],
		[{ effortHigh: '11' }, 'effortHigh too-high'],
		[{ phase: 'sprint' }, 'phase unknown-option'],
		[{ runnerNote: 'x'.repeat(301) }, 'runnerNote too-long'],
		[{ innerNote: 'x'.repeat(501) }, 'innerNote too-long']
	])('%o is not taken: %s', (changes, issue) => {
		expect(issuesOf(changes as Record<string, string>)).toEqual([issue]);
	});

	test('with pulse off it is effort alone, whatever else is sent', () => {
		const form = new FormData();
		for (const [field, value] of Object.entries(typed)) form.append(field, value);
		const answer = readForm(form, effortForm);
		expect(answer.ok && Object.keys(answer.value).sort()).toEqual([
			'effortHigh',
			'effortLow',
			'innerNote',
			'phase',
			'runnerNote'
		]);
	});

	test('whatever is taken makes a band', () => {
		const whole = fc.integer({ min: -5, max: 120 }).map(String);
		fc.assert(
			fc.property(fc.option(whole), whole, whole, whole, (low, high, effortLow, effortHigh) => {
				const answer = read({ lowPercent: low ?? '', highPercent: high, effortLow, effortHigh });
				if (answer.ok) expect(isBandSetting(settingOf(answer.value))).toBe(true);
			})
		);
	});
});
