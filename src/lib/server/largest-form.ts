const USUAL = '512K';
const UNITS: Readonly<Record<string, number>> = { '': 1, K: 1024, M: 1024 ** 2, G: 1024 ** 3 };

/**
 * How many bytes of one form the server reads at most, as BODY_SIZE_LIMIT says it: what is longer is
 * cut off before any page sees it. Read here only to tell people the true number.
 */
export function largestFormBytes(
	variables: Readonly<Record<string, string | undefined>> = process.env
): number {
	const [, number, unit = ''] =
		/^(\d+)([KMG]?)$/i.exec(variables['BODY_SIZE_LIMIT'] || USUAL) ?? [];
	return number === undefined ? Infinity : Number(number) * (UNITS[unit.toUpperCase()] ?? 1);
}

/** Whether reading a form failed because it is longer than that. */
export const isTooLarge = (thrown: unknown): boolean =>
	thrown instanceof Error && 'status' in thrown && thrown.status === 413;
