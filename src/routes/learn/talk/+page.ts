import { passages } from '$words/passages.ts';
import type { PageLoad } from './$types';

// The clock needs script; everything else on the page works without.
export const csr = true;

/** ?text=2 is the second text. Whatever else stands there shows the first. */
export const load: PageLoad = ({ url }) => {
	const asked = Number(url.searchParams.get('text') ?? 1);
	const at = Number.isInteger(asked) && passages[asked - 1] ? asked - 1 : 0;
	return { passage: passages[at] ?? passages[0], next: ((at + 1) % passages.length) + 1 };
};
