import type { Guidance } from '$lib/guidance/guide.ts';
import { narrowerBand } from '$lib/guidance/narrower-band.ts';
import type { Narrower } from '$lib/outing/kept.ts';
import { phasesOf, type Outing } from '$lib/outing/outing.ts';
import { bandView, type PhaseView } from '../../bands/view.ts';

/** The bands that these outings ask for, each once. */
export function narrowerOf(
	guidance: Extract<Guidance, { open: true }>,
	outings: readonly { readonly outing: Outing }[]
): readonly Narrower<PhaseView>[] {
	const found = new Map<string, Narrower<PhaseView>>();
	for (const { kind, target } of outings.flatMap(({ outing }) => phasesOf(outing))) {
		const band = narrowerBand(guidance, { kind, target });
		if (target === null || band === null) continue;
		found.set(`${kind} ${target.low} ${target.high}`, {
			of: { kind, target },
			pulse: bandView(band)
		});
	}
	return [...found.values()];
}
