import type { OutingPhase } from '../outing/outing.ts';
import { phaseTargets } from '../outing/phase.ts';
import type { Guidance } from './guide.ts';
import { pulseBand, type PulseBand } from './pulse-band.ts';

type OpenGuidance = Extract<Guidance, { open: true }>;

/**
 * The pulse of a phase whose author gave it a target of its own, inside the runner's band for that
 * kind of phase. It never goes over that band; where nothing of it is left inside, the band counts.
 *
 * @returns null where there is no such target, no such band, or no pulse
 */
export function narrowerBand(
	{ phases, others, pulse }: OpenGuidance,
	{ kind, target }: Pick<OutingPhase, 'kind' | 'target'>
): PulseBand | null {
	const band = [...phases, ...others].find((phase) => phase.kind === kind);
	if (target === null || pulse.kind !== 'on' || !band?.reserve) return null;
	const low = Math.max(target.low, band.reserve.low ?? 0);
	const high = Math.min(target.high, band.reserve.high);
	const reserve = low < high ? { low, high } : band.reserve;
	return pulseBand({ ...phaseTargets[kind], reserve }, pulse);
}
