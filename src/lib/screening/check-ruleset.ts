import { conditionFaults } from './check-condition.ts';
import { questionFaults } from './check-question.ts';
import type { Condition, Rule, Ruleset } from './ruleset.ts';
import { basisFaults, type RulesetFault } from './ruleset-fault.ts';
import { plansStrictestFirst, statusesMildestFirst } from './strictness.ts';

/** Everything that would make a rule set unsafe to use. An empty list means that it is sound. */
export function checkRuleset(ruleset: Ruleset): readonly RulesetFault[] {
	return [
		...duplicates(ruleset),
		...ruleset.questions.flatMap((question) => questionFaults(question, ruleset)),
		...conditionsOf(ruleset).flatMap(([id, when]) =>
			conditionFaults(when, ruleset).map((fault) => ({ id, fault }))
		),
		...ruleset.rules.flatMap(ruleFaults),
		...ruleset.gates.flatMap(({ id, basis }) => basisFaults(id, basis)),
		...wholeFaults(ruleset)
	];
}

const soundness = new WeakMap<Ruleset, boolean>();

/** Whether a rule set has no faults. Looked at once for each: published ones are frozen. */
export function isSound(ruleset: Ruleset): boolean {
	const known = soundness.get(ruleset);
	if (known !== undefined) return known;
	const sound = checkRuleset(ruleset).length === 0;
	soundness.set(ruleset, sound);
	return sound;
}

function duplicates({ questions, rules, gates, conflicts }: Ruleset): readonly RulesetFault[] {
	const ids = [...questions, ...rules, ...gates, ...conflicts].map(({ id }) => id);
	const repeated = ids.filter((id, place) => ids.indexOf(id) !== place);
	return repeated.map((id) => ({ id, fault: 'duplicate-id' }));
}

function conditionsOf(ruleset: Ruleset): readonly (readonly [string, Condition])[] {
	const named = [...ruleset.rules, ...ruleset.gates, ...ruleset.conflicts];
	return [...Object.entries(ruleset.facts), ...named.map(({ id, when }) => [id, when] as const)];
}

function ruleFaults(rule: Rule): readonly RulesetFault[] {
	const faults: RulesetFault[] = [...basisFaults(rule.id, rule.basis)];
	const needsKind = rule.does === 'outcome' || rule.does === 'pulse-off';
	if (needsKind && !rule.kind) faults.push({ id: rule.id, fault: 'missing-kind' });
	if (rule.does === 'outcome' && !statusesMildestFirst.includes(rule.outcome)) {
		faults.push({ id: rule.id, fault: 'missing-outcome' });
	}
	return faults;
}

function wholeFaults(ruleset: Ruleset): readonly RulesetFault[] {
	const { id, version, rules, questions, kept, outcomes, planLimits, conflicts } = ruleset;
	const faults: RulesetFault[] = [];
	if (!/^\d+\.\d+\.\d+/.test(version)) faults.push({ id, fault: 'bad-version' });
	const known = new Set(questions.map((question) => question.id));
	const named = [...Object.values(kept), ...conflicts.flatMap(({ fix }) => fix)];
	for (const name of named) {
		if (!known.has(name)) faults.push({ id: name, fault: 'unknown-question' });
	}
	const whole =
		statusesMildestFirst.every((status) => Object.hasOwn(outcomes, status)) &&
		plansStrictestFirst.every((plan) => Object.hasOwn(planLimits, plan));
	if (!whole) faults.push({ id, fault: 'missing-outcome' });
	for (const outside of ['urgent-event', 'resting-pulse'] as const) {
		const set = rules.some(({ when }) => 'outside' in when && when.outside === outside);
		if (!set) faults.push({ id, fault: 'nothing-outside' });
	}
	return faults;
}
