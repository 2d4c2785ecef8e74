import type { Handle } from '@sveltejs/kit';

/** Puts the language and the chosen light on the page before it is sent, so that nothing flickers. */
export const pageLook: Handle = ({ event, resolve }) => {
	const theme = event.cookies.get('theme');
	const chosen = theme === 'light' || theme === 'dark' ? `data-theme="${theme}"` : '';
	return resolve(event, {
		transformPageChunk: ({ html }) => html.replace('%lang%', 'en').replace('%theme%', chosen)
	});
};
