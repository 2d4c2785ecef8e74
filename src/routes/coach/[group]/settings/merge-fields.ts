/** What fields hold, by name; an empty one is null. */
type Fields = Readonly<Record<string, string | null>>;

export interface Merged<Kept> {
	readonly fields: Kept;
	/** Typed here and changed elsewhere meanwhile, to something else. */
	readonly conflicts: readonly string[];
}

/**
 * Joins what was typed on a page with what was kept elsewhere since that page was opened. What was
 * left as it stood on the page stays as it is kept now: a page that was open for long takes nothing
 * back.
 *
 * @param seen the fields as they stood on the page, as JSON; where it cannot be read, what was typed
 * counts
 */
export function mergeFields<Kept extends object>(
	seen: unknown,
	typed: Kept,
	kept: Kept
): Merged<Kept> {
	const before = fieldsOf(seen);
	const now = kept as Fields;
	const merged: Record<string, string | null> = {};
	const conflicts: string[] = [];
	for (const [field, value] of Object.entries(typed as Fields)) {
		const wasTyped = before === null || value !== (before[field] ?? null);
		const wasChanged = before !== null && (now[field] ?? null) !== (before[field] ?? null);
		merged[field] = wasTyped ? value : (now[field] ?? null);
		if (wasTyped && wasChanged && value !== (now[field] ?? null)) conflicts.push(field);
	}
	return { fields: merged as Kept, conflicts };
}

function fieldsOf(seen: unknown): Fields | null {
	try {
		const read: unknown = typeof seen === 'string' ? JSON.parse(seen) : null;
		return typeof read === 'object' && read !== null ? (read as Fields) : null;
	} catch {
		return null;
	}
}
