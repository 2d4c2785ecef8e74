import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate, type Evaluation } from '$lib/screening/evaluate.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import { opennessOf, severityOf } from '$lib/screening/strictness.ts';
import type { Answers } from '$lib/screening/types.ts';
import { answersOf, visibleQuestions } from '$lib/screening/visible-questions.ts';
import { nonsense, riskierAnswers, wholeForms } from './answer-sets.ts';
import { person } from './people.ts';

/*
 * Laws that any answers must keep. Common practice, no source: they are what "careful" means here.
 * A sample, not a proof, and a proof of the logic at best, not of the medicine.
 */

const RUNS = 20_000;
const { questions } = currentRuleset;
const judge = (answers: Answers) => evaluate(currentRuleset, answers);
const clears = ({ status }: Evaluation) => status === 'CLEARED_ALL' || status === 'CLEARED_WALK';
const place = fc.nat({ max: 999 });
/** Where a test counts what the sample holds, the sample is always the same one. */
const counted = { seed: 20_261_125 };

function pick<Value>(list: readonly Value[], number: number): Value | undefined {
	return list[number % list.length];
}

/** Runs a law over many whole forms. The law says false where it is broken. */
function law(
	check: (answers: Answers, one: number, two: number) => boolean,
	sample: { seed?: number } = {}
): void {
	fc.assert(fc.property(wholeForms, place, place, check), { numRuns: RUNS, ...sample });
}

test('the sample holds every outcome, many times', () => {
	const seen: Record<string, number> = {};
	law((answers) => {
		const { status } = judge(answers);
		seen[status] = (seen[status] ?? 0) + 1;
		return true;
	}, counted);
	for (const status of [
		'CLEARED_ALL',
		'CLEARED_WALK',
		'WAIT',
		'SEEK_ADVICE',
		'EMERGENCY',
		'INCOMPLETE',
		'NOT_ELIGIBLE'
	]) {
		expect(seen[status], status).toBeGreaterThan(RUNS / 200);
	}
});

/** How open an outcome is, part by part. None of them may grow. */
function openness(evaluation: Evaluation): readonly number[] {
	if (evaluation.status === 'INCOMPLETE' || evaluation.status === 'NOT_ELIGIBLE') return [-9];
	if (evaluation.status === 'EMERGENCY') return [-4, 0, 0, 0, 0, 0, 0];
	return [
		-severityOf(evaluation.status),
		Number(evaluation.pulse === 'on'),
		Number(evaluation.run),
		opennessOf(evaluation.ceiling),
		opennessOf(evaluation.startEffort),
		Number(!evaluation.urgent),
		Number(!evaluation.stopCurrent)
	];
}

test('a riskier answer never opens anything', () => {
	let compared = 0;
	law((answers, one, two) => {
		const before = judge(answers);
		if (before.status === 'INCOMPLETE' || before.status === 'NOT_ELIGIBLE') return true;
		const question = pick(visibleQuestions(currentRuleset, answers), one)!;
		const riskier = pick(riskierAnswers(question, answers[question.id]!), two);
		if (riskier === undefined) return true;
		const after = judge({ ...answers, [question.id]: riskier });
		compared += 1;
		const [was, is] = [openness(before), openness(after)];
		// A harder plan asks for more, so it may get more; status and pulse must not loosen for it.
		const looked = question.id === 'plan.effort' ? is.slice(0, 2) : is;
		return looked.every((part, at) => part <= (was[at] ?? 0));
	}, counted);
	expect(compared).toBeGreaterThan(RUNS / 2);
});

test('an answer that is missing never leads to a result', () => {
	law((answers, one) => {
		const asked = visibleQuestions(currentRuleset, answers);
		const { id } = pick(asked, one)!;
		const { [id]: _, ...rest } = answers;
		const { status } = judge(rest);
		if (id !== 'now.urgent' && judge(answers).status === 'EMERGENCY') return status === 'EMERGENCY';
		if (id !== 'age.years' && Number(answers['age.years']) < 18) return status === 'NOT_ELIGIBLE';
		return status === 'INCOMPLETE';
	});
});

test('whatever stands behind hidden questions changes nothing', () => {
	let changed = 0;
	law((answers, one, two) => {
		const visible = new Set(visibleQuestions(currentRuleset, answers).map(({ id }) => id));
		const hidden = questions.filter(({ id }) => !visible.has(id));
		const junk = Object.fromEntries(
			hidden.map(({ id }, at) => [id, pick(nonsense, one + at * two) as never])
		);
		changed += hidden.length;
		const plain = JSON.stringify(judge(answersOf(currentRuleset, answers)));
		return (
			plain === JSON.stringify(judge(answers)) &&
			plain === JSON.stringify(judge({ ...answers, ...junk }))
		);
	}, counted);
	expect(changed).toBeGreaterThan(RUNS);
});

test('not sure is the same as the careful answer', () => {
	const careful = new Map<string, string>(
		questions.flatMap((question) =>
			question.kind === 'single' && question.options.some(({ id }) => id === 'not_sure')
				? [[question.id, question.safe.includes('no') ? 'yes' : 'no'] as const]
				: []
		)
	);
	careful.set('meds.why', 'untold');
	let replaced = 0;
	law((answers) => {
		const sure = Object.fromEntries(
			Object.entries(answers).map(([id, answer]) => {
				if (answer !== 'not_sure') return [id, answer];
				replaced += 1;
				return [id, careful.get(id)];
			})
		);
		return JSON.stringify(judge(sure)) === JSON.stringify(judge(answers));
	}, counted);
	expect(replaced).toBeGreaterThan(RUNS / 10);
});

describe('junk never throws and never clears', () => {
	test('in place of one answer', () => {
		law((answers, one, two) => {
			const question = pick(visibleQuestions(currentRuleset, answers), one)!;
			const junk = pick(nonsense, two) as never;
			return !clears(judge({ ...answers, [question.id]: junk }));
		});
	});

	test('of any shape, in place of one answer of the person with nothing flagged', () => {
		const asked = visibleQuestions(currentRuleset, person());
		fc.assert(
			fc.property(fc.anything(), place, (junk, one) => {
				const question = pick(asked, one)!;
				const evaluation = judge(person({ [question.id]: junk as never }));
				// A number can happen to be an answer; nothing else can.
				return (question.kind === 'integer' && typeof junk === 'number') || !clears(evaluation);
			}),
			{ numRuns: RUNS }
		);
	});

	test('of any shape, in place of all answers', () => {
		fc.assert(
			fc.property(fc.anything({ maxDepth: 1 }), (junk) => !clears(judge(junk as never))),
			{ numRuns: RUNS / 4 }
		);
	});

	test('beside the answers, under a name that was never asked', () => {
		fc.assert(
			fc.property(fc.string(), fc.anything({ maxDepth: 1 }), (name, junk) => {
				if (questions.some(({ id }) => id === name) || junk === undefined) return true;
				const answers = Object.fromEntries([...Object.entries(person()), [name, junk]]) as Answers;
				return judge(answers).status === 'INCOMPLETE';
			}),
			{ numRuns: RUNS / 4 }
		);
	});
});
