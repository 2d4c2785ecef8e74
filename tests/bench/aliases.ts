import { registerHooks } from 'node:module';

/** Lets plain Node resolve the two aliases that the app's own build knows. */
const aliases = {
	'$lib/': new URL('../../src/lib/', import.meta.url),
	'$words/': new URL('../../src/lib/words/en/', import.meta.url)
};

registerHooks({
	resolve(specifier, context, nextResolve) {
		for (const [alias, folder] of Object.entries(aliases)) {
			if (specifier.startsWith(alias)) {
				return nextResolve(new URL(specifier.slice(alias.length), folder).href, context);
			}
		}
		return nextResolve(specifier, context);
	}
});
