import { describe, expect, it } from 'vitest';
import { jacksonCapacity, type CapacityQuestions } from '$lib/physiology/questions-capacity.ts';

const woman: CapacityQuestions = {
	sex: 'female',
	ageYears: 40,
	bodyMassIndex: 27,
	activityLevel: 2
};

describe('capacity from questions', () => {
	it('names every field that is wrong, all at once', () => {
		expect(
			jacksonCapacity({ sex: 'male', ageYears: 400, bodyMassIndex: 270, activityLevel: 8 })
		).toEqual({
			kind: 'refused',
			reasons: [
				{ code: 'out-of-limits', field: 'ageYears' },
				{ code: 'out-of-limits', field: 'bodyMassIndex' },
				{ code: 'out-of-limits', field: 'activityLevel' }
			]
		});
	});

	it('is for adults, and for whole activity levels', () => {
		expect(jacksonCapacity({ ...woman, ageYears: 17 })).toMatchObject({
			reasons: [{ code: 'outside-study', field: 'ageYears' }]
		});
		expect(jacksonCapacity({ ...woman, activityLevel: 2.5 })).toMatchObject({
			reasons: [{ code: 'out-of-limits', field: 'activityLevel' }]
		});
	});

	it('gives no number where the line leads to one that nobody has', () => {
		const answer = jacksonCapacity({ ...woman, ageYears: 80, bodyMassIndex: 45, activityLevel: 0 });
		expect(answer).toEqual({
			kind: 'refused',
			reasons: [{ code: 'out-of-limits', field: 'capacity' }]
		});
	});

	it('says that it comes from questions, so that no speed is set from it', () => {
		expect(jacksonCapacity(woman)).toMatchObject({ capacity: { basis: 'questions' } });
	});
});
