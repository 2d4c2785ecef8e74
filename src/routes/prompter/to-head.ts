import { tick } from 'svelte';

/**
 * Where a step takes the place of another, whoever hears the page begins at its head, and is not left
 * where a button was that is gone.
 */
export async function toHead(): Promise<void> {
	await tick();
	const head = document.querySelector('h1');
	head?.setAttribute('tabindex', '-1');
	head?.focus({ preventScroll: true });
	scrollTo(0, 0);
}
