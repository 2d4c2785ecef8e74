/* What an outing needs once it is on. The page fetches it when an outing is taken, not before. */
export { chosenCues } from './cues.ts';
export { default as Over } from './Over.svelte';
export { Player } from './player.svelte.ts';
export { default as Ready } from './Ready.svelte';
export { default as Run } from './Run.svelte';
