import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BandSetting } from '$lib/guidance/band-setting.ts';
import { guide } from '$lib/guidance/guide.ts';
import { settingsInForce, type SetBand } from '$lib/guidance/settings-in-force.ts';
import { closed } from '$lib/screening/closed-access.ts';
import { anyEntries } from './any-setting.ts';
import { anyAccess, anyProfile, measured, wideOpen } from './open-accesses.ts';

// Our own rules, no source.

const band = (low: number, high: number, effortLow = 4, effortHigh = 5): BandSetting => ({
	lowFraction: low,
	highFraction: high,
	effortLow,
	effortHigh
});
const entry = (changes: Partial<SetBand>): SetBand => ({
	groupId: 'lantern',
	phase: 'steady-run',
	by: 'coach',
	setting: band(0.45, 0.55),
	setAt: 1000,
	...changes
});
const settingOf = (entries: readonly SetBand[]) =>
	settingsInForce(entries, 'steady-run').map(({ setting }) => setting);

function runOf(entries: readonly SetBand[], access = wideOpen) {
	const guidance = guide(access, measured, [], entries);
	const found = guidance.open && guidance.phases.find(({ kind }) => kind === 'steady-run');
	if (!found) throw new Error('there is a run');
	return found;
}

describe('which setting counts', () => {
	test('nothing set: none', () => {
		expect(settingsInForce([], 'steady-run')).toEqual([]);
		expect(settingsInForce([entry({ phase: 'brisk-walk' })], 'steady-run')).toEqual([]);
	});

	test('the newest, in whatever order they are read', () => {
		const entries = [
			entry({ setAt: 2, setting: band(0.4, 0.5) }),
			entry({ setAt: 3, setting: band(0.5, 0.6) }),
			entry({ setAt: 1, setting: band(0.3, 0.4) })
		];
		expect(settingOf(entries)).toEqual([band(0.5, 0.6)]);
	});

	test('of two at the same moment the later read', () => {
		expect(settingOf([entry({}), entry({ setting: band(0.5, 0.6) })])).toEqual([band(0.5, 0.6)]);
	});

	test('a runner’s own before the group’s default, an older one too', () => {
		const group = entry({ by: 'group', setAt: 5000, setting: band(0.5, 0.6) });
		expect(settingOf([entry({}), group])).toEqual([band(0.45, 0.55)]);
	});

	test('a runner’s own taken back: the group’s default again', () => {
		const group = entry({ by: 'group', setting: band(0.5, 0.6) });
		expect(settingOf([group, entry({}), entry({ setAt: 2000, setting: null })])).toEqual([
			band(0.5, 0.6)
		]);
	});

	test('both taken back: none', () => {
		const group = entry({ by: 'group', setting: null });
		expect(settingOf([group, entry({ setting: null })])).toEqual([]);
	});
});

describe('the guidance of a runner whose coach set a band', () => {
	// Rest 68, maximum 175.8: 45 % of reserve is 116.51, 55 % is 127.29 (Karvonen 1957, Tanaka 2001).
	test('has the coach’s edges, and says who set them and when', () => {
		const run = runOf([entry({})]);
		expect(run.pulse?.low?.bpm).toBeCloseTo(116.51, 10);
		expect(run.pulse?.high.bpm).toBeCloseTo(127.29, 10);
		expect(run.effort).toEqual({ low: 4, high: 5 });
		expect(run.set).toEqual({
			by: 'coach',
			since: 1000,
			groupIds: ['lantern'],
			groupsDiffer: false,
			cuts: []
		});
	});

	test('leaves the phases that nobody set as they are', () => {
		const set = guide(wideOpen, measured, [], [entry({})]);
		const usual = guide(wideOpen, measured, []);
		if (!set.open || !usual.open) throw new Error('both are open');
		const others = (phases: typeof set.phases) =>
			phases.filter(({ kind }) => kind !== 'steady-run');
		expect(others(set.phases)).toEqual(others(usual.phases));
		expect(usual.phases.every(({ set: { by } }) => by === 'default')).toBe(true);
	});

	test('in two groups: the gentler band, for pulse and effort each', () => {
		const one = entry({ groupId: 'lantern', setting: band(0.5, 0.6, 3, 4), setAt: 1 });
		const two = entry({ groupId: 'harbour', setting: band(0.4, 0.5, 5, 6), setAt: 2, by: 'group' });
		const run = runOf([one, two]);
		expect(run.pulse?.high.fraction).toBe(0.5);
		expect(run.effort).toEqual({ low: 3, high: 4 });
		expect(run.set).toMatchObject({ by: 'coach', since: 2, groupsDiffer: true });
		expect(run.set).toHaveProperty('groupIds', ['harbour', 'lantern']);
	});

	test('in two groups that say the same: no word of a difference', () => {
		const run = runOf([entry({}), entry({ groupId: 'harbour' })]);
		expect(run.set).toMatchObject({ groupsDiffer: false, groupIds: ['lantern'] });
	});
});

describe('whatever coaches set', () => {
	const all = [anyAccess, anyProfile, anyEntries] as const;

	test('closed stays closed, without one number', () => {
		fc.assert(
			fc.property(anyProfile, anyEntries, (profile, entries) => {
				expect(guide(closed('SEEK_ADVICE'), profile, [], entries)).toEqual({
					open: false,
					code: 'SEEK_ADVICE'
				});
			})
		);
	});

	test('pulse off stays off', () => {
		fc.assert(
			fc.property(...all, (access, profile, entries) => {
				fc.pre(!access.pulse.on);
				const guidance = guide(access, profile, [], entries);
				if (!guidance.open) throw new Error('an open access stays open');
				expect(guidance.pulse.kind).toBe('off');
				expect(guidance.phases.every(({ pulse }) => pulse === null)).toBe(true);
			})
		);
	});

	test('no setting adds a phase: walk only stays without a run', () => {
		fc.assert(
			fc.property(...all, (access, profile, entries) => {
				const kinds = (guidance: ReturnType<typeof guide>) =>
					guidance.open ? guidance.phases.map(({ kind }) => kind) : [];
				expect(kinds(guide(access, profile, [], entries))).toEqual(
					kinds(guide(access, profile, []))
				);
			})
		);
	});

	test('no number is above what screening allows: moderate, 70 %, effort 6, the care team’s limit', () => {
		fc.assert(
			fc.property(...all, (access, profile, entries) => {
				const guidance = guide(access, profile, [], entries);
				if (!guidance.open) throw new Error('an open access stays open');
				const isModerate = access.ceiling === 'moderate' || access.startEffort === 'moderate';
				for (const { pulse, effort } of guidance.phases) {
					expect(effort.high).toBeLessThanOrEqual(6);
					expect(effort.low).toBeLessThanOrEqual(effort.high);
					if (pulse === null) continue;
					expect(pulse.high.fraction).toBeLessThanOrEqual(isModerate ? 0.59 : 0.7);
					expect(pulse.high.bpm).toBeLessThanOrEqual(access.pulse.careTeamLimitBpm ?? 300);
					if (pulse.low !== null) expect(pulse.low.bpm).toBeLessThan(pulse.high.bpm);
				}
			})
		);
	});

	test('the order in which entries of different moments are read changes nothing', () => {
		fc.assert(
			fc.property(...all, (access, profile, entries) => {
				const dated = entries.map((one, i) => ({ ...one, setAt: i }));
				const gist = (guidance: ReturnType<typeof guide>) =>
					guidance.open
						? guidance.phases.map(({ pulse, effort, speed }) => ({ pulse, effort, speed }))
						: [];
				expect(gist(guide(access, profile, [], dated.toReversed()))).toEqual(
					gist(guide(access, profile, [], dated))
				);
			})
		);
	});
});
