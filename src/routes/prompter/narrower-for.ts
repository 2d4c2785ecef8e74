import type { OutingPhase } from '$lib/outing/outing.ts';
import type { Kept } from './phone.svelte.ts';

/** The band of a phase that has a target of its own, where the server worked one out. */
export const narrowerFor = ({ kind, target }: OutingPhase, kept: Kept | null) =>
	kept?.narrower.find(
		({ of }) =>
			of.kind === kind && of.target?.low === target?.low && of.target?.high === target?.high
	);
