/** What was read for many runners at once, asked for one runner at a time. */
export type Of<Kept> = (runnerId: string) => Kept;

/** The rows of each runner, in the order in which they came. */
export function byRunner<Row extends { readonly runner_id: string }>(
	rows: readonly Row[]
): Of<readonly Row[]> {
	const sorted = Map.groupBy(rows, ({ runner_id }) => runner_id);
	return (runnerId) => sorted.get(runnerId) ?? [];
}
