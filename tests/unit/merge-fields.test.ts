import { expect, it } from 'vitest';
import { mergeFields } from '../../src/routes/coach/[group]/settings/merge-fields.ts';

// Our own rules, no source.

const opened: Record<'name' | 'defibrillator' | 'firstAider', string | null> = {
	name: 'Lantern Street',
	defibrillator: null,
	firstAider: null
};
const seen = JSON.stringify(opened);
const kept = { ...opened, defibrillator: 'Club house' };

it('keeps what was set elsewhere meanwhile, where the page left it alone', () => {
	const typed: typeof opened = { ...opened, firstAider: 'Bram Holt' };
	expect(mergeFields(seen, typed, kept)).toEqual({
		fields: { name: 'Lantern Street', defibrillator: 'Club house', firstAider: 'Bram Holt' },
		conflicts: []
	});
});

it('names what was changed here and elsewhere, unless to the same', () => {
	const typed: typeof opened = { ...opened, defibrillator: 'Sports hall' };
	expect(mergeFields(seen, typed, kept).conflicts).toEqual(['defibrillator']);
	expect(mergeFields(seen, kept, kept).conflicts).toEqual([]);
	// Told once, a second press means it.
	expect(mergeFields(JSON.stringify(kept), typed, kept)).toEqual({ fields: typed, conflicts: [] });
});

it('lets a field be emptied', () => {
	expect(mergeFields(JSON.stringify(kept), opened, kept).fields.defibrillator).toBeNull();
});

it.each([null, '', 'nonsense', '3', 'null'])(
	'takes what was typed where %j tells nothing',
	(bad) => {
		expect(mergeFields(bad, opened, kept)).toEqual({ fields: opened, conflicts: [] });
	}
);
