interface Shown {
	readonly heading: string;
	readonly why: readonly { readonly reason: string }[];
	readonly covered: readonly unknown[];
	readonly pulseOff: readonly string[];
	readonly starting: readonly string[];
	readonly care: readonly string[];
	readonly careLimitBpm: number | null;
	readonly closedByAdvice: boolean;
	readonly stopCurrent: boolean;
	readonly actions: readonly unknown[];
}

/** What stands for less than today's answers alone would: said without saying what it is. */
const EARLIER: ReadonlySet<string> = new Set(['WALK_PAIN', 'WALK_ADVISED']);

/**
 * A result as somebody sees it who came back to a shared tablet by a code: what they may do, and the
 * reasons that they gave today. Nothing of what was told earlier, pain and advice among it, for the
 * paper with the code may be in other hands.
 */
export function ofToday<Page extends Shown>(page: Page, said: ReadonlySet<string>) {
	const given = (ids: readonly string[]) => ids.filter((id) => said.has(id));
	const why = page.why.filter(({ reason }) => said.has(reason));
	const pulseOff = given(page.pulseOff);
	return {
		...page,
		heading: EARLIER.has(page.heading) ? ('CLEARED_WALK' as const) : page.heading,
		why,
		pulseOff,
		starting: given(page.starting),
		care: given(page.care),
		covered: [],
		careLimitBpm: null,
		closedByAdvice: false,
		stopCurrent: page.stopCurrent && why.length > 0,
		actions: [],
		/** Something that was told earlier still counts. */
		earlierCounts:
			EARLIER.has(page.heading) ||
			page.closedByAdvice ||
			why.length < page.why.length ||
			pulseOff.length < page.pulseOff.length
	};
}
