import adapter from '@sveltejs/adapter-node';

// The tests build the app once more, in a language that nobody speaks, beside the real one.
const isPseudo = process.env.BREATHMARK_WORDS === 'pseudo';

/** @type {import('@sveltejs/kit').Config} */
export default {
	compilerOptions: { runes: true },
	kit: {
		adapter: adapter(isPseudo ? { out: '.svelte-kit/pseudo/build' } : {}),
		outDir: isPseudo ? '.svelte-kit/pseudo' : '.svelte-kit',
		// Links load whole pages, so no page needs the list of all routes.
		router: { resolution: 'server' },
		alias: { $words: 'src/lib/words/en' },
		// The perimeter does it, in words of ours: src/perimeter/same-origin.ts.
		csrf: { trustedOrigins: ['*'] },
		csp: {
			mode: 'auto',
			directives: {
				'default-src': ['self'],
				'script-src': ['self'],
				'style-src': ['self'],
				// Kit's route announcer carries one inline style attribute; exactly that one is allowed.
				'style-src-attr': ['unsafe-hashes', 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='],
				'img-src': ['self', 'data:'],
				// The tones of an outing, made in the page.
				'media-src': ['self', 'blob:'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'worker-src': ['self'],
				'manifest-src': ['self'],
				'object-src': ['none'],
				'base-uri': ['none'],
				'form-action': ['self'],
				'frame-ancestors': ['none']
			}
		}
	}
};
