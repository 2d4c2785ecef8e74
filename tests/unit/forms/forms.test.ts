import { describe, expect, test } from 'vitest';
import { aboutYouForm } from '$lib/forms/about-you.ts';
import { deviceCodeForm, settingsForm } from '$lib/forms/account.ts';
import { adviceForm } from '$lib/forms/advice.ts';
import { emergencyNumberForm } from '$lib/forms/emergency-number.ts';
import { morningForm } from '$lib/forms/morning.ts';
import { readForm } from '$lib/forms/read-form.ts';
import { consentForm } from '$lib/forms/screening-steps.ts';

function sent(fields: Record<string, string | string[]>): FormData {
	const form = new FormData();
	for (const [field, value] of Object.entries(fields)) {
		for (const part of [value].flat()) form.append(field, part);
	}
	return form;
}

const codes = (answer: ReturnType<typeof readForm>) =>
	answer.ok ? {} : Object.fromEntries(answer.issues.map(({ field, code }) => [field, code]));

describe('reading a form', () => {
	test('an unticked box is missing, not a no', () => {
		expect(codes(readForm(sent({}), consentForm))).toEqual({ agree: 'missing' });
	});

	test('a field that comes twice with two values counts as missing', () => {
		const answer = readForm(
			sent({ beats: ['68', '70'], seconds: '60', on: '2026-11-25' }),
			morningForm
		);
		expect(codes(answer)).toEqual({ beats: 'missing' });
	});

	test('what was typed comes back with the issues', () => {
		const answer = readForm(sent({ beats: 'many', seconds: '60', on: '2026-11-25' }), morningForm);
		expect(answer).toMatchObject({ ok: false, values: { beats: 'many', on: '2026-11-25' } });
	});

	test('fields that the form does not know are ignored', () => {
		const answer = readForm(sent({ agree: 'yes', status: 'CLEARED_ALL' }), consentForm);
		expect(answer).toEqual({ ok: true, value: { agree: 'yes' } });
	});
});

describe('a morning’s count', () => {
	const good = { beats: '17', seconds: '15', on: '2026-11-25' };
	test.each([
		['beats', '', 'missing'],
		['beats', 'sixty', 'not-a-number'],
		['beats', '68.5', 'not-whole'],
		['beats', '0', 'too-low'],
		['beats', '401', 'too-high'],
		['seconds', '45', 'unknown-option'],
		['on', '2027-02-29', 'not-a-date'],
		['on', 'yesterday', 'not-a-date']
	])('%s "%s" is %s', (field, value, code) => {
		expect(codes(readForm(sent({ ...good, [field]: value }), morningForm))).toEqual({
			[field]: code
		});
	});

	test('is read as numbers', () => {
		expect(readForm(sent(good), morningForm)).toEqual({
			ok: true,
			value: { beats: 17, seconds: 15, on: '2026-11-25' }
		});
	});
});

describe('about you', () => {
	const empty = {
		name: '',
		sex: 'none',
		heightCentimetres: '',
		weightKilograms: '',
		activityLevel: '',
		supervisedMaximumBpm: '',
		supervisedCapacity: '',
		speedUnits: 'km/h',
		paceUnits: 'min/km'
	};

	test('may be left empty', () => {
		expect(readForm(sent(empty), aboutYouForm)).toMatchObject({
			ok: true,
			value: { name: null, sex: null, weightKilograms: null, supervisedMaximumBpm: null }
		});
	});

	test('takes a comma for a point', () => {
		const answer = readForm(sent({ ...empty, weightKilograms: '72,5' }), aboutYouForm);
		expect(answer).toMatchObject({ ok: true, value: { weightKilograms: 72.5 } });
	});

	test.each([
		['supervisedMaximumBpm', '400', 'too-high'],
		['supervisedMaximumBpm', '90', 'too-low'],
		['supervisedMaximumBpm', '171.5', 'not-whole'],
		['activityLevel', '8', 'too-high'],
		['heightCentimetres', '1.70', 'too-low'],
		['weightKilograms', 'heavy', 'not-a-number'],
		['speedUnits', 'knots', 'unknown-option'],
		['name', 'x'.repeat(41), 'too-long']
	])('%s "%s" is %s', (field, value, code) => {
		expect(codes(readForm(sent({ ...empty, [field]: value }), aboutYouForm))).toEqual({
			[field]: code
		});
	});
});

describe('advice', () => {
	const good = {
		givenOn: '2026-11-20',
		role: 'doctor',
		scope: 'walk',
		covers: ['R-JOINT'],
		limitBpm: ''
	};

	test('may cover nothing: a limit narrows whatever it is about', () => {
		const { covers: _, ...without } = good;
		expect(readForm(sent(without), adviceForm, ['covers'])).toMatchObject({
			ok: true,
			value: { covers: [] }
		});
	});

	test('several reasons come as a list', () => {
		const answer = readForm(sent({ ...good, covers: ['R-JOINT', 'R-AGE-45'] }), adviceForm, [
			'covers'
		]);
		expect(answer).toMatchObject({
			ok: true,
			value: { covers: ['R-JOINT', 'R-AGE-45'], limitBpm: null }
		});
	});

	test('an unknown role is not guessed', () => {
		expect(codes(readForm(sent({ ...good, role: 'coach' }), adviceForm, ['covers']))).toEqual({
			role: 'unknown-option'
		});
	});
});

describe('small forms', () => {
	test('an emergency number is digits, perhaps with spaces', () => {
		expect(readForm(sent({ number: '11 2' }), emergencyNumberForm)).toMatchObject({
			ok: true,
			value: { number: '112' }
		});
		expect(codes(readForm(sent({ number: 'help' }), emergencyNumberForm))).toEqual({
			number: 'not-a-number'
		});
	});

	test('a device code forgives small letters, spaces and hyphens', () => {
		expect(readForm(sent({ code: ' k7qf-2mxr ' }), deviceCodeForm)).toMatchObject({
			value: { code: 'K7QF2MXR' }
		});
		expect(codes(readForm(sent({ code: 'K7QF' }), deviceCodeForm))).toEqual({ code: 'wrong' });
	});

	test('a time zone has to exist', () => {
		expect(
			codes(readForm(sent({ theme: 'dark', timeZone: 'Mars/Olympus' }), settingsForm))
		).toEqual({
			timeZone: 'unknown-option'
		});
	});
});
