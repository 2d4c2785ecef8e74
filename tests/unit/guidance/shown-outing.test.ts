import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pastSight, shownOuting, type PastSight } from '$lib/guidance/shown-outing.ts';
import { settleEntries } from '$lib/outing/settle-entries.ts';
import { anyEntry } from '../outing/any-entry.ts';
import { doneOuting } from '../outing/done-entries.ts';
import { wideOpen } from './wide-open.ts';
import { closed } from '$lib/screening/closed-access.ts';

// Our own rules, no source.

const outing = doneOuting(
	[
		{ kind: 'warm-up-walk', seconds: 400 },
		{
			kind: 'brisk-walk',
			seconds: 300,
			answer: {
				talk: 'with-breaths',
				effort: 6,
				speedKmh: 6.4,
				afterPassage: true,
				pulse: { bpm: 131, source: 'chest-strap' }
			}
		}
	],
	{
		more: [
			{
				kind: 'pulse-summary',
				phase: 1,
				source: 'chest-strap',
				meanBpm: 128,
				highestBpm: 133,
				measuredSeconds: 290
			}
		]
	}
);
const text = (sight: PastSight) => JSON.stringify(shownOuting(outing, sight));

describe('what is shown of a past outing', () => {
	it('is everything while the gate is open with pulse on', () => {
		expect(pastSight(wideOpen)).toBe('all');
		for (const part of ['131', '128', '133', '6.4', '"effort":6', 'with-breaths']) {
			expect(text('all')).toContain(part);
		}
	});

	it('holds no pulse while pulse is off', () => {
		const pulse = { on: false, reasons: ['H-MEDS'], careTeamLimitBpm: 120 } as const;
		expect(pastSight({ ...wideOpen, pulse })).toBe('no-pulse');
		expect(text('no-pulse')).not.toMatch(/131|128|133|bpm/i);
		expect(text('no-pulse')).toContain('"effort":6');
	});

	it('is what was done, and talk in words, while the gate is closed for whatever reason', () => {
		for (const code of ['NO_RESULT', 'SEEK_ADVICE', 'EXPIRED', 'WAIT'] as const) {
			expect(pastSight(closed(code))).toBe('words');
		}
		expect(text('words')).not.toMatch(/131|128|133|bpm|6\.4|"effort":\d|"speedKmh":\d/i);
		expect(text('words')).toContain('with-breaths');
		expect(shownOuting(outing, 'words').totals.totalSeconds).toBe(700);
	});

	it('never holds more than what it is about, whatever was written down', () => {
		const entries = fc.array(anyEntry, { minLength: 1, maxLength: 20 });
		fc.assert(
			fc.property(entries, (some) => {
				const shown = JSON.stringify(shownOuting(settleEntries(some), 'words'));
				expect(shown).not.toMatch(/"(effort|speedKmh)":\d|bpm|"target"|plannedId/);
			})
		);
	});

	it('says that something felt wrong, and not what', () => {
		const wrong = (sign: 'call-now' | 'none') =>
			shownOuting(doneOuting([], { more: [{ kind: 'something-wrong', sign }] }), 'all');
		expect(wrong('call-now').feltWrong).toBe(true);
		expect(JSON.stringify(wrong('call-now'))).not.toContain('call-now');
		expect(wrong('none').feltWrong).toBe(false);
	});
});
