import { mount } from 'svelte';
import Prompter from './Prompter.svelte';

/*
 * The prompter with nothing of the framework but what draws it: a runner outdoors has little network,
 * and no other page is led to from here by script.
 */
const page = document.getElementById('page');
if (page === null) throw new Error('the page has no place for the prompter');
// What the server drew is the same as what is drawn now, so nothing moves.
page.replaceChildren();
mount(Prompter, { target: page });
document.documentElement.dataset.ready = '';

addEventListener('load', () => {
	// A browser may refuse, as in a private window: then there is no page without a network.
	const type = import.meta.env.DEV ? 'module' : 'classic';
	navigator.serviceWorker?.register('/service-worker.js', { type }).catch(() => undefined);
});
