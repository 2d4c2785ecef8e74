import { expect, test } from 'vitest';
import { fromTo } from '$words/from-to.ts';

// Common practice, no source.

test('a range of numbers has two ends, unless they are the same', () => {
	expect(fromTo(5, 6)).toBe('5–6');
	expect(fromTo(5, 5)).toBe('5');
});
