import { expect, test } from 'vitest';
import { isNewEnough } from '../../../.setup/toolchain.mjs';

test.each([
	['20.20.2', false],
	['23.11.0', false],
	['24.0.0', true],
	['26.10.0', true],
	['100.0.0', true]
])('Node %s is new enough for 24.0: %s', (version, enough) => {
	expect(isNewEnough(version, '>=24.0')).toBe(enough);
});

test('the second number counts where the first is the same', () => {
	expect(isNewEnough('24.3.9', '>=24.4')).toBe(false);
	expect(isNewEnough('24.4.0', '>=24.4')).toBe(true);
	expect(isNewEnough('25.0.0', '>=24.4')).toBe(true);
});
