import { describe, expect, test } from 'vitest';
import { ofToday } from '../../src/routes/screening/result/of-today.ts';

// Our own rules, no source.

const page: Parameters<typeof ofToday>[0] = {
	heading: 'CLEARED_ALL',
	why: [],
	covered: [],
	pulseOff: [],
	starting: [],
	care: [],
	careLimitBpm: null,
	closedByAdvice: false,
	stopCurrent: false,
	actions: [{ name: 'bands' }]
};

describe('a result that is seen with a code of a shared tablet', () => {
	test('is whole where all of it was said today, but for ways to what is kept', () => {
		const today: typeof page = { ...page, heading: 'SEEK_ADVICE', why: [{ reason: 'R-JOINT' }] };
		expect(ofToday(today, new Set(['R-JOINT']))).toEqual({
			...today,
			actions: [],
			earlierCounts: false
		});
	});

	test('names no reason from before, and says that something counts', () => {
		const both: typeof page = {
			...page,
			heading: 'SEEK_ADVICE',
			why: [{ reason: 'R-EVENT' }, { reason: 'R-JOINT' }],
			pulseOff: ['H-REST', 'H-MEDS'],
			starting: ['S-NEW', 'S-OLD'],
			care: ['A-ONE', 'A-OLD'],
			stopCurrent: true
		};
		const said = new Set(['R-JOINT', 'H-MEDS', 'S-NEW', 'A-ONE']);
		const seen = ofToday(both, said);
		expect(seen).toMatchObject({
			why: [{ reason: 'R-JOINT' }],
			pulseOff: ['H-MEDS'],
			starting: ['S-NEW'],
			care: ['A-ONE'],
			earlierCounts: true
		});
		expect(JSON.stringify(seen)).not.toMatch(/EVENT|REST|OLD/);
	});

	test('tells nothing of advice: no limit, nothing covered, no refusal, no walking by advice', () => {
		const advised: typeof page = {
			...page,
			covered: ['R-AGE-45'],
			careLimitBpm: 121,
			closedByAdvice: true
		};
		const seen = ofToday(advised, new Set());
		expect(seen).toMatchObject({ covered: [], careLimitBpm: null, closedByAdvice: false });
		expect(seen.earlierCounts).toBe(true);
		expect(JSON.stringify(seen)).not.toMatch(/121|AGE/);
		for (const heading of ['WALK_ADVISED', 'WALK_PAIN']) {
			const walking = ofToday({ ...page, heading }, new Set());
			expect(walking).toMatchObject({ heading: 'CLEARED_WALK', earlierCounts: true });
		}
	});

	test('does not say that advice lifted something: that it counts would tell that there was some', () => {
		const lifted = ofToday({ ...page, covered: ['R-AGE-45'] }, new Set());
		expect(lifted.earlierCounts).toBe(false);
	});

	test('asks nobody to stop at once for what was told before', () => {
		const before: typeof page = { ...page, stopCurrent: true, why: [{ reason: 'R-EVENT' }] };
		expect(ofToday(before, new Set()).stopCurrent).toBe(false);
		expect(ofToday(before, new Set(['R-EVENT'])).stopCurrent).toBe(true);
	});
});
