import { LOCALE } from './locale.ts';

/** 3.4 as "3.4", 10 as "10.0": a fixed number of decimals. */
export const decimal = (value: number, decimals: number) =>
	new Intl.NumberFormat(LOCALE, {
		minimumFractionDigits: decimals,
		maximumFractionDigits: decimals
	}).format(value);

/** 0.0364 as "0.036", 11 as "11": no more decimals than these. */
export const upToDecimals = (value: number, decimals: number) =>
	new Intl.NumberFormat(LOCALE, { maximumFractionDigits: decimals }).format(value);

/** 3.4121 as "3.4", 0.00004823 as "0.000048": two digits that count. */
export const twoDigits = (value: number) =>
	new Intl.NumberFormat(LOCALE, { maximumSignificantDigits: 2 }).format(value);

/** 0.62 as "62". */
export const wholePercent = (fraction: number) => String(Math.round(fraction * 100));

/** 0.62 as "62 %". */
export const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;
