import { pureFolders } from '../../.setup/lint-pure.js';

/** The parts of the app. A page is all that reaches a browser; a door is what only the server runs. */
export type Part =
	| 'calendar'
	| 'physiology'
	| 'screening'
	| 'outing'
	| 'recording'
	| 'guidance'
	| 'published'
	| 'words'
	| 'locale'
	| 'forms'
	| 'sent form'
	| 'look'
	| 'device'
	| 'components'
	| 'server'
	| 'page'
	| 'door';

interface Allowed {
	readonly parts: readonly Part[];
	/** Of these only types, which leave nothing behind in the running code. */
	readonly typesOf?: readonly Part[];
	readonly packages: readonly RegExp[];
}

const pure = pureFolders as readonly Part[];
const nothing = { packages: [] };

const svelte = [/^svelte($|\/)/, /^chart\.js($|\/)/, /^\$app\/(?!server$)/];
const data = [/^kysely($|\/)/, /^pg$/, /^(@better-auth|better-auth)($|\/)/, /^zod$/];
const mail = [/^nodemailer$/];
const lists = [/^csv-parse($|\/)/, /^uqr$/];
const kit = [/^@sveltejs\/kit($|\/)/, /^\$app\//, /^\$env\//, /^\.\/\$types$/];

/** Who may import whom. Everyone may import their own part. */
export const mayImport: Readonly<Record<Part, Allowed>> = {
	calendar: { parts: [], ...nothing },
	physiology: { parts: [], ...nothing },
	screening: { parts: ['calendar'], ...nothing },
	outing: { parts: ['calendar', 'physiology'], ...nothing },
	recording: { parts: ['calendar', 'physiology'], ...nothing },
	guidance: { parts: pure.filter((part) => part !== 'guidance'), ...nothing },
	/** Values with their sources: too many to send to a phone, so for tests and the server only. */
	published: { parts: pure, ...nothing },
	words: { parts: ['locale'], typesOf: [...pure, 'published'], ...nothing },
	/** The language by name, and no text: the one file of the words for whoever sorts or formats. */
	locale: { parts: [], ...nothing },
	look: { parts: [], packages: [/^@fontsource-variable\//] },
	forms: { parts: pure, packages: [/^zod$/] },
	/** What a page shows of a form that came back: the one file of the forms without zod. */
	'sent form': { parts: [], typesOf: ['forms'], ...nothing },
	device: { parts: pure, packages: [/^idb$/, /^@simplewebauthn\/browser$/] },
	components: { parts: [...pure, 'words', 'locale', 'sent form'], packages: svelte },
	server: {
		parts: [...pure, 'forms', 'locale'],
		packages: [/^node:/, ...data, ...mail, ...lists, ...kit]
	},
	page: {
		// The forms bring zod, which is too heavy for a phone on a weak network.
		parts: [...pure, 'words', 'locale', 'look', 'device', 'components', 'sent form'],
		typesOf: ['forms', 'published'],
		packages: [
			...svelte,
			/^@sveltejs\/kit$/,
			/^\.\/\$types$/,
			/^\$service-worker$/,
			/^\$env\/.*\/public$/,
			/^@fontsource-variable\//
		]
	},
	door: {
		parts: [...pure, 'published', 'words', 'locale', 'forms', 'server', 'page'],
		packages: [/^node:/, ...data, ...kit]
	}
};

const byFolder: Readonly<Record<string, Part>> = {
	'src/perimeter/': 'door',
	'src/hooks.server.ts': 'door',
	'src/hooks.client.ts': 'page',
	'src/service-worker.ts': 'page',
	'src/lib/forms/sent-form.ts': 'sent form',
	'src/lib/words/en/locale.ts': 'locale',
	...Object.fromEntries(
		(Object.keys(mayImport) as Part[]).map((part) => [`src/lib/${part}/`, part])
	)
};

/**
 * @param isReachedFromPages whether a page imports it; decides for what stands beside a page
 * @returns null for a file that belongs to none of the parts
 */
export function partOf(path: string, isReachedFromPages: boolean): Part | null {
	const folder = Object.keys(byFolder).find((start) => path.startsWith(start));
	if (folder) return byFolder[folder] ?? null;
	if (!path.startsWith('src/routes/')) return null;
	return isDoor(path) || !isReachedFromPages ? 'door' : 'page';
}

/** Where the framework decides by the name of a file of the routes. */
export const isDoor = (path: string) => /\/\+server\.ts$|\.server\.ts$/.test(path);
export const isPage = (path: string) => /\.svelte(\.ts)?$|\/\+(page|layout)\.ts$/.test(path);
