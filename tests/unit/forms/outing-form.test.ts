import { describe, expect, test } from 'vitest';
import { readOuting } from '$lib/forms/outing-form.ts';

// Our own rules, no source.

const phase = (path: string, fields: Record<string, string> = {}) => ({
	[`${path}-kind`]: 'steady-run',
	[`${path}-seconds`]: '0:50',
	[`${path}-target-low`]: '',
	[`${path}-target-high`]: '',
	[`${path}-speedKmh`]: '',
	[`${path}-inclinePercent`]: '',
	[`${path}-cue`]: '',
	...Object.fromEntries(Object.entries(fields).map(([name, text]) => [`${path}-${name}`, text]))
});

function read(fields: Record<string, string>, unit: 'km/h' | 'mph' = 'km/h') {
	const form = new FormData();
	for (const [name, text] of Object.entries(fields)) form.set(name, text);
	return readOuting(form, unit);
}

describe('an outing from a form', () => {
	test('holds what was typed, in order, repeats and all', () => {
		const typed = { seconds: '2:00', speedKmh: '4', 'target-low': '52', 'target-high': '60' };
		const { outing, issues } = read(
			{
				name: '  Outing   7 ',
				...phase('parts-0', { kind: 'warm-up-walk', seconds: '6:40' }),
				'parts-1-times': '3',
				...phase('parts-1-phases-0', { ...typed, inclinePercent: '0,5', cue: ' Short steps ' }),
				...phase('parts-1-phases-1', { kind: 'recovery-walk', seconds: '1:50' }),
				...phase('parts-2')
			},
			'mph'
		);
		expect(issues).toEqual([]);
		expect(outing).toMatchObject({
			name: 'Outing 7',
			parts: [
				{ kind: 'warm-up-walk', seconds: 400, target: null, speedKmh: null, cue: '' },
				{
					times: 3,
					phases: [
						{ seconds: 120, target: { low: 0.52, high: 0.6 }, inclinePercent: 0.5 },
						{ kind: 'recovery-walk', seconds: 110 }
					]
				},
				{ kind: 'steady-run', seconds: 50 }
			]
		});
		expect(JSON.stringify(outing)).toContain('"speedKmh":6.437376');
	});

	test.each([
		['seconds', '0:00', 'duration-too-short'],
		['seconds', '10:00:00', 'duration-too-long'],
		['seconds', '50', 'duration-not-whole'],
		['target-low', '50', 'target-not-a-range'],
		['speedKmh', 'fast', 'speed-out-of-limits'],
		['speedKmh', '99', 'speed-out-of-limits'],
		['inclinePercent', '40', 'incline-out-of-limits'],
		['cue', 'x'.repeat(121), 'cue-too-long']
	])('tells what is wrong with %s "%s", and keeps it as it was typed', (field, text, code) => {
		const { issues, values } = read({ name: 'One', ...phase('parts-0', { [field]: text }) });
		expect(issues).toMatchObject([{ code, path: ['parts', 0, field.split('-')[0]] }]);
		expect(values[`parts-0-${field}`]).toBe(text);
	});

	test('with five hundred phases is refused, and read no further than it has to be', () => {
		const many = (count: number) =>
			Object.assign(
				{ name: 'One' },
				...Array.from({ length: count }, (_, n) => phase(`parts-${n}`))
			);
		expect(read(many(500)).issues).toEqual([{ code: 'too-many-phases', path: ['parts'] }]);
		expect(read(many(1500)).outing.parts).toHaveLength(1000);
	});

	test('without anything in it is empty, and has no name', () => {
		expect(read({}).issues.map(({ code }) => code)).toEqual(['name-empty', 'outing-empty']);
	});

	test('with a kind that does not exist becomes a recovery walk, never a run', () => {
		const { outing } = read({ name: 'One', ...phase('parts-0', { kind: 'sprint' }) });
		expect(outing.parts[0]).toMatchObject({ kind: 'recovery-walk' });
	});
});
