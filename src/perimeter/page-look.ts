import { base } from '$app/paths';
import type { Handle } from '@sveltejs/kit';
import { LANGUAGE } from '$words/locale.ts';
import { readingPages } from './reading-pages.ts';

/**
 * A browser may keep a whole page in memory and show it again by its back button, although the server
 * said that it must not be stored. What it says may have ended since: this asks for it again.
 */
const SEEN_AGAIN = `<script src="${base}/seen-again.js" defer></script>`;

/**
 * Puts the language and the chosen light on the page before it is sent, so that nothing flickers,
 * and on all but reading pages the short script that asks again for a page brought back from memory.
 */
export const pageLook: Handle = ({ event, resolve }) => {
	const theme = event.cookies.get('theme');
	const chosen = theme === 'light' || theme === 'dark' ? `data-theme="${theme}"` : '';
	const script = readingPages.has(event.route.id ?? '') ? '' : SEEN_AGAIN;
	return resolve(event, {
		transformPageChunk: ({ html }) =>
			html.replace('%lang%', LANGUAGE).replace('%theme%', chosen).replace('%seen-again%', script)
	});
};
