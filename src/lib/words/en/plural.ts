import { LOCALE } from './locale.ts';

const rules = new Intl.PluralRules(LOCALE);

/** What is said of so many, by the plurals of this language: some have one form, some have six. */
export const plural = (
	count: number,
	forms: Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>
): string => forms[rules.select(count)] ?? forms.other;
