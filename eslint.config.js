import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import typescript from 'typescript-eslint';
import { ceiling, lists } from './.setup/lint-length.js';
import { pureFolders, pureRules } from './.setup/lint-pure.js';
import svelteConfig from './svelte.config.js';

/** The service worker has a project of its own, which the type check reads. */
const untyped = ['src/service-worker.ts'];
/** The only places that write to the log; what they write is never what a person told us. */
const logging = ['src/perimeter/explain-fault.ts', 'src/lib/server/{house,open-house,sweep}.ts'];

export default typescript.config(
	{
		ignores: ['**/.svelte-kit/', '**/node_modules/', 'build/', 'data/', 'reports/', 'test-results/']
	},
	{ linterOptions: { reportUnusedDisableDirectives: 'error' } },
	...typescript.configs.recommended,
	...svelte.configs['flat/recommended'],
	{
		rules: {
			'array-callback-return': 'error',
			complexity: ['error', 15],
			eqeqeq: 'error',
			'max-depth': ['error', 3],
			'no-constant-binary-expression': 'error',
			'no-debugger': 'error',
			'no-else-return': 'error',
			'no-fallthrough': 'error',
			'no-self-compare': 'error',
			'no-unreachable': 'error',
			'no-useless-return': 'error',
			'object-shorthand': 'error',
			'prefer-template': 'error',
			'@typescript-eslint/no-unused-vars': [
				'error',
				{ argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true }
			],
			// The app always stands at the root of its address.
			'svelte/no-navigation-without-resolve': 'off',
			// {' '} is how a template says that a space stays.
			'svelte/no-useless-mustaches': 'off',
			'@typescript-eslint/consistent-type-imports': ['error', { disallowTypeAnnotations: false }]
		}
	},
	{
		files: ['src/**/*.ts', 'tests/**/*.ts'],
		ignores: untyped,
		extends: [typescript.configs.recommendedTypeCheckedOnly],
		languageOptions: { parserOptions: { projectService: true } },
		rules: {
			'@typescript-eslint/require-await': 'off',
			'@typescript-eslint/unbound-method': 'off',
			'@typescript-eslint/restrict-template-expressions': 'off',
			'@typescript-eslint/switch-exhaustiveness-check': [
				'error',
				{ considerDefaultExhaustiveForUnions: true }
			]
		}
	},
	{
		// What a test expects may have any shape: expect.any(), parsed answers, broken input; and an
		// assertion may say what is wrong with it.
		files: ['tests/**'],
		rules: {
			'@typescript-eslint/no-unnecessary-type-assertion': 'off',
			'@typescript-eslint/no-unsafe-argument': 'off',
			'@typescript-eslint/no-unsafe-assignment': 'off',
			'@typescript-eslint/no-unsafe-member-access': 'off',
			'@typescript-eslint/no-unsafe-return': 'off'
		}
	},
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: {
			globals: globals.browser,
			parserOptions: { parser: typescript.parser, svelteConfig }
		}
	},
	{
		files: ['src/**'],
		rules: {
			'max-lines': ['error', { max: ceiling, skipBlankLines: false, skipComments: false }],
			'no-console': 'error'
		}
	},
	{ files: lists, rules: { 'max-lines': 'off' } },
	{ files: logging, rules: { 'no-console': 'off' } },
	{ files: pureFolders.map((folder) => `src/lib/${folder}/**`), rules: pureRules }
);
