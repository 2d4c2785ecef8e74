import { describe, expect, it } from 'vitest';
import { isTooLarge, largestFormBytes } from '$lib/server/largest-form.ts';

// The units are those of the server that we build for (@sveltejs/adapter-node, BODY_SIZE_LIMIT).
describe('the largest form', () => {
	it.each([
		[undefined, 524_288],
		['', 524_288],
		['512K', 524_288],
		['2m', 2_097_152],
		['1G', 1_073_741_824],
		['1000', 1000],
		['Infinity', Infinity]
	])('where the setting is %s holds %s bytes', (setting, bytes) => {
		expect(largestFormBytes({ BODY_SIZE_LIMIT: setting })).toBe(bytes);
	});

	it('is told apart from every other slip of a form', () => {
		expect(isTooLarge(Object.assign(new Error('long'), { status: 413 }))).toBe(true);
		expect(isTooLarge(Object.assign(new Error('cut off'), { status: 400 }))).toBe(false);
		expect(isTooLarge(new TypeError('no form'))).toBe(false);
		expect(isTooLarge(413)).toBe(false);
	});
});
