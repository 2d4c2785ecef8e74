import { phaseTargets, type PhaseKind, type PhaseTarget } from '../outing/phase.ts';
import type { SettlingIn } from '../outing/settling-in.ts';
import { applySetting, type Applied, type Cut } from './band-setting.ts';
import { ceilingNow } from './ceiling-now.ts';
import { narrowTarget } from './narrow-target.ts';
import type { OpenAccess } from './pulse-basis.ts';
import { settingsInForce, type InForce, type SetBand } from './settings-in-force.ts';

/** Who decided a phase's target, and since when. */
export type SetBy =
	| { readonly by: 'default' }
	| {
			/** 'coach' for this runner, 'group' for everybody in the group. */
			readonly by: 'coach' | 'group';
			/** When the newest of the entries that decided was made, epoch milliseconds. */
			readonly since: number;
			/** The groups whose entries decided. */
			readonly groupIds: readonly string[];
			/** True where two groups set different bands, and the gentler edges count. */
			readonly groupsDiffer: boolean;
			/** Where what was set went beyond what is open to this runner now. */
			readonly cuts: readonly Cut[];
	  };

type Tried = Applied & { readonly entry: InForce };

/**
 * The target of a phase for one runner: the default narrowed by screening, or what coaches set cut
 * by it. Where a runner is in two groups that set different bands, the gentler one counts, for the
 * pulse and for the effort each.
 */
export function setTarget(
	kind: PhaseKind,
	entries: readonly SetBand[],
	access: OpenAccess,
	settling: SettlingIn
): { readonly target: PhaseTarget; readonly set: SetBy } {
	const usual = phaseTargets[kind];
	const [first, ...others] = settingsInForce(entries, kind).map((entry): Tried => ({
		entry,
		...applySetting(usual, entry.setting, access, settling)
	}));
	if (first === undefined) {
		return { target: narrowTarget(usual, ceilingNow(access, settling)), set: { by: 'default' } };
	}
	const pulse = others.reduce((one, two) => (gentler(one, two, 'reserve') ? one : two), first);
	const effort = others.reduce((one, two) => (gentler(one, two, 'effort') ? one : two), first);
	const target = { ...usual, reserve: pulse.target.reserve, effort: effort.target.effort };
	return { target, set: setBy([...new Set([pulse, effort])], [first, ...others]) };
}

function gentler(one: Tried, two: Tried, edges: 'reserve' | 'effort'): boolean {
	const [{ low, high }, other] = [one.target[edges], two.target[edges]];
	return high === other.high ? (low ?? 0) <= (other.low ?? 0) : high < other.high;
}

function setBy(deciding: readonly Tried[], all: readonly Tried[]): SetBy {
	const shape = ({ target: { reserve, effort } }: Tried) => JSON.stringify([reserve, effort]);
	return {
		by: deciding.some(({ entry }) => entry.by === 'coach') ? 'coach' : 'group',
		since: Math.max(...deciding.map(({ entry }) => entry.setAt)),
		groupIds: deciding.map(({ entry }) => entry.groupId),
		groupsDiffer: new Set(all.map(shape)).size > 1,
		cuts: deciding.flatMap(({ cuts }) => cuts)
	};
}
