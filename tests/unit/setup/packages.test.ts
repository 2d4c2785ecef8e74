import { expect, test } from 'vitest';
import { holds } from '../../../.setup/packages.mjs';

const locked = {
	'': {},
	'node_modules/a': { version: '1.0.0' },
	'node_modules/b': { version: '2.0.0', optional: true }
};

test('nothing installed does not hold what is locked', () => {
	expect(holds({}, locked)).toBe(false);
});

test('each locked package is there in the locked version', () => {
	expect(holds({ 'node_modules/a': { version: '1.0.0' } }, locked)).toBe(true);
	expect(holds({ 'node_modules/a': { version: '1.0.1' } }, locked)).toBe(false);
	expect(holds({ 'node_modules/b': { version: '2.0.0' } }, locked)).toBe(false);
});

test('an optional package may be missing, but not be another', () => {
	const both = { 'node_modules/a': { version: '1.0.0' }, 'node_modules/b': { version: '2.0.1' } };
	expect(holds(both, locked)).toBe(false);
});

test('where all are optional, as those of the platforms are, one must be there', () => {
	const platforms = {
		'': {},
		'node_modules/x': { version: '1.0.0', optional: true },
		'node_modules/y': { version: '1.0.0', optional: true }
	};
	expect(holds({}, platforms)).toBe(false);
	expect(holds({ 'node_modules/y': { version: '1.0.0' } }, platforms)).toBe(true);
});
