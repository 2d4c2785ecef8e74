import { phaseTargets, type PhaseKind, type TalkTarget } from '$lib/outing/phase.ts';
import { metsOf, oxygenUptake } from '$lib/physiology/metabolic-cost.ts';
import { metresPerMinuteFromKmPerHour } from '$lib/physiology/units.ts';
import type { Plan } from '$lib/screening/types.ts';
import { decimal, percent } from '$words/numbers.ts';

/** One part of the generic plan, as a doctor reads it. Nothing in it is about this person. */
export interface LoadRow {
	readonly kind: PhaseKind;
	readonly speed: string;
	readonly mets: string;
	readonly reserve: string;
	readonly rpe: string;
	readonly talk: TalkTarget;
}

/**
 * Usual speeds of beginners in km/h, and what such effort is rated on the scale from 6 to 20 (ACSM
 * classes, Garber 2011; runs as beginners rate them, common practice).
 */
const usual: readonly { kind: PhaseKind; low: number; high: number; rpe: string }[] = [
	{ kind: 'warm-up-walk', low: 4, high: 4.8, rpe: '9–12' },
	{ kind: 'brisk-walk', low: 5.6, high: 6.4, rpe: '12–13' },
	{ kind: 'steady-run', low: 6.5, high: 8, rpe: '13–15' },
	{ kind: 'recovery-walk', low: 4, high: 5, rpe: '9–12' },
	{ kind: 'cool-down-walk', low: 3, high: 4, rpe: '6–10' }
];

/** The load of each part of the plan in METs and per cent of reserve; walks only for a walking plan. */
export function loadOf(plan: Plan): readonly LoadRow[] {
	const rows = plan === 'walk' ? usual.filter(({ kind }) => !isOfARun(kind)) : usual;
	return rows.map(({ kind, low, high, rpe }) => {
		const { gait, reserve, talk } = phaseTargets[kind];
		const mets = (kmPerHour: number) => {
			const speedMetresPerMinute = metresPerMinuteFromKmPerHour(kmPerHour);
			return decimal(metsOf(oxygenUptake({ gait, speedMetresPerMinute, grade: 0 })), 1);
		};
		return {
			kind,
			speed: `${decimal(low, 1)}–${decimal(high, 1)} km/h`,
			mets: `${mets(low)}–${mets(high)}`,
			reserve:
				reserve.low === null
					? `< ${percent(reserve.high)}`
					: `${Math.round(reserve.low * 100)}–${percent(reserve.high)}`,
			rpe,
			talk
		};
	});
}

const isOfARun = (kind: PhaseKind) => kind === 'steady-run' || kind === 'recovery-walk';
