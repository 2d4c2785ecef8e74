// How long a file may be, in lines, comments and all.

export const ceiling = 200;

/** Formulas and rules are read by people who are not programmers, one at a time. */
export const pureCeiling = 120;

/** Long because they are lists: rules as dated data, words, sources and published values. */
export const lists = [
	'src/lib/screening/rulesets/**',
	'src/lib/words/**',
	'src/lib/*/sources.ts',
	'src/lib/physiology/formulas.ts',
	'src/lib/physiology/limits.ts',
	'src/lib/published/**'
];
