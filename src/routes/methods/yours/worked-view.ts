import type { PhaseBand } from '$lib/guidance/phase-band.ts';
import type { PulseBasis } from '$lib/guidance/pulse-basis.ts';
import { workedBand, type WorkedEdge } from '$lib/guidance/worked-band.ts';
import { decimal, percent } from '$words/numbers.ts';

/** Each number of a step with one digit after the point; with pulse off there is none. */
export function workedView(phase: PhaseBand, basis: PulseBasis, ageYears: number) {
	const worked = workedBand(phase, basis);
	if (worked === null || basis.kind !== 'on') return null;
	const { resting, maximum } = basis;
	return {
		ageYears,
		basis: maximum.basis,
		maximum: one(maximum.bpm),
		maximumSpread: one(maximum.spreadBpm),
		resting: one(resting.bpm),
		restingSpread: one(resting.spreadBpm),
		mornings: resting.mornings,
		reserve: one(worked.reserveBpm),
		low: worked.low === null ? null : edgeView(worked.low),
		high: edgeView(worked.high),
		limit: worked.limitBpm
	};
}

function edgeView({ fraction, ofReserveBpm, bpm, ...doubts }: WorkedEdge) {
	return {
		share: percent(fraction),
		ofReserve: one(ofReserveBpm),
		bpm: one(bpm),
		restingDoubt: one(doubts.restingDoubtBpm),
		maximumDoubt: one(doubts.maximumDoubtBpm),
		spread: one(doubts.spreadBpm)
	};
}

const one = (value: number) => decimal(value, 1);
