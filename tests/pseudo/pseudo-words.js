import { fileURLToPath } from 'node:url';

const PSEUDO = fileURLToPath(new URL('./pseudo-text.js', import.meta.url));
/** What names the language is no text of it. */
const WORDS = /\/src\/lib\/words\/en\/(?!locale\.ts)[\w-]+\.ts$/;

/**
 * Builds the app with every text of the words in the pseudo-language, where BREATHMARK_WORDS asks
 * for it; else does nothing.
 * @returns {import('vite').Plugin}
 */
export function pseudoWords() {
	const isAskedFor = process.env.BREATHMARK_WORDS === 'pseudo';
	return {
		name: 'pseudo-words',
		// After the types are gone.
		enforce: 'post',
		transform(code, id) {
			if (!isAskedFor || !WORDS.test(id)) return null;
			/** @type {string[]} */
			const names = [];
			const inside = code.replace(
				/^export (const|function) (\w+)/gm,
				(_, /** @type {string} */ kind, /** @type {string} */ name) => {
					names.push(name);
					return `${kind} ${name}`;
				}
			);
			const shown = names.map(
				(name) => `const ${name}__shown = __pseudo(${name});\nexport { ${name}__shown as ${name} };`
			);
			const bring = `import { pseudo as __pseudo } from ${JSON.stringify(PSEUDO)};`;
			return { code: [bring, inside, ...shown].join('\n'), map: null };
		}
	};
}
