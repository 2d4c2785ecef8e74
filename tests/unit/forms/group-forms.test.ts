import { describe, expect, test } from 'vitest';
import { groupForm, invitationForm } from '$lib/forms/group.ts';
import { attendanceForm, emergencyContactForm, joinForm } from '$lib/forms/members.ts';
import { readForm } from '$lib/forms/read-form.ts';

function sent(fields: Record<string, string>): FormData {
	const form = new FormData();
	for (const [field, value] of Object.entries(fields)) form.append(field, value);
	return form;
}

const codes = (answer: ReturnType<typeof readForm>) =>
	answer.ok ? {} : Object.fromEntries(answer.issues.map(({ field, code }) => [field, code]));

describe('a group', () => {
	const least = {
		name: ' Lantern  Street beginners ',
		usualPlace: '',
		timeZone: 'Europe/Dublin',
		units: 'km/h',
		paceUnits: 'min/km',
		emergencyNumber: '',
		meetingPoint: '',
		defibrillator: '',
		firstAider: ''
	};

	test('needs a name, a time zone and units; the rest may wait', () => {
		expect(readForm(sent(least), groupForm)).toEqual({
			ok: true,
			value: {
				name: 'Lantern Street beginners',
				usualPlace: null,
				timeZone: 'Europe/Dublin',
				units: 'km/h',
				paceUnits: 'min/km',
				emergencyNumber: null,
				meetingPoint: null,
				defibrillator: null,
				firstAider: null
			}
		});
		expect(codes(readForm(sent({}), groupForm))).toEqual({
			name: 'missing',
			timeZone: 'missing',
			units: 'missing',
			paceUnits: 'missing'
		});
	});

	test('keeps its emergency number as digits', () => {
		const answer = readForm(sent({ ...least, emergencyNumber: '1 1 2' }), groupForm);
		expect(answer).toMatchObject({ ok: true, value: { emergencyNumber: '112' } });
	});

	test.each([
		['name', '  ', 'missing'],
		['name', 'x'.repeat(61), 'too-long'],
		['timeZone', 'Mars/Olympus', 'unknown-option'],
		['units', 'knots', 'unknown-option'],
		['paceUnits', 'min/league', 'unknown-option'],
		['emergencyNumber', 'help', 'not-a-number'],
		['meetingPoint', 'x'.repeat(121), 'too-long']
	])('%s "%s" is %s', (field, value, code) => {
		expect(codes(readForm(sent({ ...least, [field]: value }), groupForm))).toEqual({
			[field]: code
		});
	});

	test('an invitation ends on a day that exists', () => {
		expect(codes(readForm(sent({ endsOn: '2027-02-29' }), invitationForm))).toEqual({
			endsOn: 'not-a-date'
		});
	});
});

describe('a member', () => {
	test('joins by a name and a box that was not ticked before', () => {
		expect(readForm(sent({ name: "Siobhán O'Neill", agree: 'yes' }), joinForm)).toMatchObject({
			ok: true
		});
		expect(codes(readForm(sent({ name: '' }), joinForm))).toEqual({
			name: 'missing',
			agree: 'missing'
		});
	});

	test('is here or is not: a press says which', () => {
		expect(codes(readForm(sent({ member: '', here: 'perhaps' }), attendanceForm))).toEqual({
			member: 'missing',
			here: 'unknown-option'
		});
	});
});

describe('an emergency contact', () => {
	const good = { contactName: 'راشد', contactPhone: '+353 (87) 123-45/67', contactRelation: '' };

	test('is a name and a number to call', () => {
		expect(readForm(sent(good), emergencyContactForm)).toEqual({
			ok: true,
			value: { contactName: 'راشد', contactPhone: '+353871234567', contactRelation: null }
		});
	});

	test.each([
		['contactPhone', '', 'missing'],
		['contactPhone', 'my sister', 'not-a-number'],
		['contactPhone', '+', 'not-a-number'],
		['contactPhone', '1'.repeat(16), 'not-a-number'],
		['contactName', '', 'missing'],
		['contactRelation', 'x'.repeat(41), 'too-long']
	])('%s "%s" is %s', (field, value, code) => {
		expect(codes(readForm(sent({ ...good, [field]: value }), emergencyContactForm))).toEqual({
			[field]: code
		});
	});
});
