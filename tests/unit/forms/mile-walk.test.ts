import { describe, expect, it } from 'vitest';
import { mileWalkForm } from '$lib/forms/mile-walk.ts';
import { readForm } from '$lib/forms/read-form.ts';

// Our own rules, no source.

const right = {
	weight: '72,5',
	weightUnit: 'kg',
	sex: 'none',
	time: '14:30',
	read: 'minute',
	pulse: '140'
};

function read(changes: Partial<typeof right>) {
	const form = new FormData();
	for (const [field, text] of Object.entries({ ...right, ...changes })) form.set(field, text);
	return readForm(form, mileWalkForm);
}

describe('the form of a mile walk', () => {
	it('reads minutes and seconds as minutes, and "rather not say" as null', () => {
		expect(read({})).toMatchObject({ ok: true, value: { weight: 72.5, time: 14.5, sex: null } });
	});

	it.each(['14.5', '14.30', '14', '14:5', '14:60', '0:14:30', '14 min'])(
		'asks again what may mean two times: %s',
		(time) => {
			expect(read({ time })).toMatchObject({ issues: [{ field: 'time', code: 'not-a-time' }] });
		}
	);

	it.each([
		['', 'missing'],
		['7:59', 'faster-than-a-walk'],
		['40:01', 'slower-than-a-walk']
	])('says why %s is no time of a mile walk: %s', (time, code) => {
		expect(read({ time })).toMatchObject({ issues: [{ field: 'time', code }] });
	});
});
