import type { SourceFile } from './source-file.ts';

/** Where something is written for a person to read, or put into the order of an alphabet. */
const shown = /^src\/(lib\/(words|components|server|device|forms)|routes|perimeter)\//;

const bans: readonly { readonly found: RegExp; readonly says: string; readonly where: RegExp }[] = [
	{
		found: /\.to(Fixed|Precision)\(/,
		says: 'always writes a point: a number is written by $words/numbers.ts',
		where: /^src\/(lib\/(words|components)|routes)\//
	},
	{
		found: /\.(toLocale\w*|localeCompare)\(/,
		says: 'is in the language of the machine: ask what stands in the words',
		where: shown
	},
	{
		found: /\bIntl\.(?!supportedValuesOf\(|LDML)\w+(?!\w)(?!\(LOCALE\b)/,
		says: 'names a language of its own: take LOCALE from $words/locale.ts',
		where: shown
	},
	{
		found: /=== 1\s+\?/,
		says: 'is a plural of English: it goes by $words/plural.ts',
		where: /^src\/lib\/words\//
	}
];

/** Numbers, dates, plurals and orders that do not follow the one language, as a line each. */
export function localeFaults(files: readonly SourceFile[]): string[] {
	return files.flatMap(({ path, text }) =>
		bans
			.filter(({ where }) => where.test(path))
			.flatMap(({ found, says }) =>
				[...text.matchAll(new RegExp(found, 'g'))].map(([what]) => `${path}: ${what} ${says}`)
			)
	);
}
