// The lint rules that keep a folder pure: the same call gives the same answer, at any time and in
// any place. The clock, the zone and the language are arguments.

/** The folders they hold for. */
export const pureFolders = [
	'calendar',
	'physiology',
	'screening',
	'outing',
	'recording',
	'guidance'
];

const outside = [
	['console', 'crypto', 'document', 'fetch', 'global', 'globalThis', 'indexedDB', 'localStorage'],
	['navigator', 'performance', 'process', 'queueMicrotask', 'self', 'sessionStorage'],
	['setImmediate', 'setInterval', 'setTimeout', 'window', 'Buffer', 'Temporal']
].flat();

const localDateParts = 'FullYear|Month|Date|Day|Hours|Minutes|Seconds|Milliseconds';

/** @type {import('eslint').Linter.RulesRecord} */
export const pureRules = {
	'no-restricted-globals': ['error', ...outside],
	'no-restricted-properties': [
		'error',
		{ object: 'Date', property: 'now', message: 'The clock is an argument.' },
		{ object: 'Math', property: 'random', message: 'Chance is an argument.' }
	],
	'no-restricted-syntax': [
		'error',
		{
			selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
			message: 'The clock is an argument.'
		},
		{
			selector: 'CallExpression[callee.name="Date"]',
			message: 'The clock is an argument.'
		},
		{
			selector: 'NewExpression[callee.name="Date"][arguments.length>1]',
			message: 'This is read in the zone of the machine: use Date.UTC.'
		},
		{
			selector: `MemberExpression[property.name=/^([gs]et(${localDateParts})|getTimezoneOffset)$/]`,
			message: 'This is read in the zone of the machine: use the UTC twin.'
		},
		{
			selector: 'CallExpression[callee.property.name=/^toLocale/][arguments.length=0]',
			message: 'Name the language: the default is that of the machine.'
		},
		{
			selector: 'CallExpression[callee.property.name="localeCompare"][arguments.length<2]',
			message: 'Name the language: the default is that of the machine.'
		},
		{
			selector:
				':matches(NewExpression, CallExpression)[callee.object.name="Intl"][arguments.length=0]',
			message: 'Name the language: the default is that of the machine.'
		},
		{
			selector:
				':matches(NewExpression, CallExpression)[callee.object.name="Intl"][arguments.0.type="Identifier"][arguments.0.name="undefined"]',
			message: 'Name the language: the default is that of the machine.'
		},
		{ selector: 'ImportExpression', message: 'A pure folder loads nothing while it runs.' },
		{ selector: 'AwaitExpression', message: 'A pure folder waits for nothing.' }
	]
};
