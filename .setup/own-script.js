import { basename, relative } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { build } from 'vite';

const QUERY = '?own-script';
/** Beside the framework's own files, which a browser may keep for good: their names have a hash. */
const FOLDER = '_app/immutable/own';

/**
 * Bundles a file by itself where a page asks for `./file.ts?own-script`, and answers its place. Its
 * files are shared with no other page, so they hold what this one needs and nothing more; the styles
 * of what it draws come with the page.
 * @param {import('vite').Plugin[]} others also at work inside it
 * @returns {import('vite').Plugin}
 */
export function ownScript(others) {
	/** @type {import('vite').ResolvedConfig} */
	let config;
	return {
		name: 'own-script',
		enforce: 'pre',
		configResolved(resolved) {
			config = resolved;
		},
		async resolveId(id, importer) {
			if (!id.endsWith(QUERY)) return null;
			const found = await this.resolve(id.slice(0, -QUERY.length), importer);
			return found === null ? null : found.id + QUERY;
		},
		async load(id) {
			if (!id.endsWith(QUERY)) return null;
			const entry = id.slice(0, -QUERY.length);
			if (config.command === 'serve') return answering(relative(config.root, entry));
			const files = await bundled(entry, config, others);
			// The server only has to know the name; it builds the very same files for that.
			if (!config.build.ssr) {
				for (const { fileName, code } of files) {
					// What has a name is listed in the manifest, so that it is kept for offline too.
					this.emitFile({ type: 'asset', fileName, name: basename(fileName), source: code });
				}
			}
			const first = files.find(({ isEntry }) => isEntry);
			if (first === undefined) throw new Error(`${entry} came to nothing`);
			return answering(first.fileName);
		}
	};
}

/** @param {string} path */
const answering = (path) => `export default ${JSON.stringify(path)};`;

/**
 * @param {string} entry
 * @param {import('vite').ResolvedConfig} config
 * @param {import('vite').Plugin[]} others
 */
async function bundled(entry, config, others) {
	const names = `${FOLDER}/[name].[hash].js`;
	const result = await build({
		root: config.root,
		configFile: false,
		publicDir: false,
		logLevel: 'warn',
		plugins: [
			scriptsAlone,
			svelte({ configFile: false, compilerOptions: { runes: true } }),
			others
		],
		resolve: { alias: config.resolve.alias },
		build: {
			target: config.build.target,
			write: false,
			modulePreload: false,
			rollupOptions: { input: entry, output: { entryFileNames: names, chunkFileNames: names } }
		}
	});
	if (!('output' in result)) throw new Error('one bundle was expected');
	const chunks = result.output.filter((file) => file.type === 'chunk');
	if (chunks.length < result.output.length) throw new Error(`${entry} brings more than scripts`);
	return chunks;
}

const NO_STYLE = '\0no-style';
const BEFORE_IMPORTS = '\0vite/preload-helper.js';

/**
 * Styles come with the page. One that is empty would still be asked for, by a name that is nowhere;
 * and what asks for styles before an import weighs and has nothing to do.
 * @type {import('vite').Plugin}
 */
const scriptsAlone = {
	name: 'scripts-alone',
	enforce: 'pre',
	resolveId: (id) => (/[?&]type=style\b|\.css$/.test(id) ? NO_STYLE : null),
	load(id) {
		if (id === BEFORE_IMPORTS) return 'export const __vitePreload = (load) => load();';
		return id === NO_STYLE ? '' : null;
	}
};
