import type { Page } from '@playwright/test';

/** What is acted on, by its role. */
const ACTS =
	/^(link|button|textbox|searchbox|checkbox|radio|combobox|listbox|spinbutton|slider|switch|tab|menuitem)\b/;
/** What is found by its name in a list of landmarks, pictures or tables. */
const NAMED = /^(img|region|navigation|table|radiogroup|figure|form)\b/;

/** A coach may give two groups one name; what leads to them says it as it is. */
const GROUP = /^\/coach\/[\da-f-]{36}$/;

interface Node {
	readonly role: string;
	readonly name: string;
	url: string;
}

/**
 * The page as its accessibility tree says it: names and roles, 4.1.2; the purpose of a link from its
 * words alone, 2.4.9, a criterion of level AAA, which is this app's own rule.
 */
export async function heard(page: Page): Promise<string[]> {
	const nodes = nodesOf(await page.locator('body').ariaSnapshot());
	const nameless = nodes
		.filter(({ role, name }) => name === '' && (ACTS.test(role) || NAMED.test(role)))
		.map(({ role, url }) => `4.1.2 a ${role} without a name ${url}`);
	const places = new Map<string, Set<string>>();
	for (const { role, name, url } of nodes) {
		if (role !== 'link' || name === '') continue;
		places.set(name, (places.get(name) ?? new Set()).add(url));
	}
	const twice = [...places]
		.filter(([, urls]) => urls.size > 1 && ![...urls].every((url) => GROUP.test(url)))
		.map(([name, urls]) => `2.4.9 the link “${name}” leads to ${[...urls].join(' and ')}`);
	return [...nameless, ...twice];
}

function nodesOf(snapshot: string): readonly Node[] {
	const nodes: Node[] = [];
	for (const line of snapshot.split('\n')) {
		const text = line.trim().replace(/^- '?/, '');
		const url = /^\/url: "?(.*?)"?$/.exec(text)?.[1];
		const last = nodes.at(-1);
		if (url !== undefined && last) last.url = url;
		const [, role, name] = /^([a-z]+)\b(?: "((?:[^"\\]|\\.)*)")?/.exec(text) ?? [];
		if (role) nodes.push({ role, name: name ?? '', url: '' });
	}
	return nodes;
}
