/**
 * What a page's `__data.json` holds, written out: the framework sends each node as a list of values
 * in which objects and lists name the places of their parts.
 */
export function sentData(text: string): readonly unknown[] {
	// One that leads elsewhere has no nodes.
	const { nodes = [] } = JSON.parse(text) as { nodes?: readonly (Node | null)[] };
	return nodes.flatMap((node) => (node?.type === 'data' ? [written(node.data)] : []));
}

interface Node {
	readonly type: string;
	readonly data: readonly unknown[];
}

function written(values: readonly unknown[], place = 0): unknown {
	const value = values[place];
	if (Array.isArray(value)) {
		const [kind, ...parts] = value as unknown[];
		if (kind === 'null') return partsOf(values, pairs(parts));
		if (typeof kind === 'string') throw new Error(`${kind} is nothing that our pages send`);
		return (value as number[]).map((at) => written(values, at));
	}
	if (typeof value !== 'object' || value === null) return value;
	return partsOf(values, Object.entries(value as Record<string, number>));
}

const partsOf = (values: readonly unknown[], places: readonly (readonly [string, number])[]) =>
	Object.fromEntries(places.map(([key, at]) => [key, written(values, at)]));

/** Of an object without a prototype: a key, the place of its value, and so on. */
const pairs = (parts: readonly unknown[]) =>
	parts.flatMap((key, i) => (i % 2 === 0 ? [[String(key), Number(parts[i + 1])] as const] : []));

/** Every key and every value that is no list or object, with where it stands. */
export function leaves(value: unknown, at = ''): readonly { at: string; leaf: unknown }[] {
	if (typeof value !== 'object' || value === null) return [{ at, leaf: value }];
	const list = Array.isArray(value);
	return Object.entries(value).flatMap(([key, inner]) =>
		leaves(inner, list ? `${at}[]` : `${at}.${key}`)
	);
}
