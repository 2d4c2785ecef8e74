// How long a file may be, in lines, comments and all.

export const ceiling = 200;

/** Long because they are lists: rules as dated data, words, and sources of published values. */
export const lists = ['src/lib/screening/rulesets/**', 'src/lib/words/**', 'src/lib/*/sources.ts'];
