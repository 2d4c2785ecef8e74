import { sources, type Source, type SourceId } from '$lib/physiology/sources.ts';

/** A source as it is named in a table, and where it stands in full. */
export function sourceName(id: SourceId) {
	const { authors, year }: Source = sources[id];
	const [first = authors] = authors.split(/,| et al/);
	const name = /^\S+ [A-Z]{1,3}( |$)/.test(first) ? first.split(' ')[0] : first;
	return { id, name: year === null ? name : `${name} ${year}` };
}
