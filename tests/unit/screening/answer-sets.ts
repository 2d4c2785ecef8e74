import fc from 'fast-check';
import type { Question } from '$lib/screening/ruleset.ts';
import { currentRuleset } from '$lib/screening/rulesets/index.ts';
import type { Answer, Answers } from '$lib/screening/types.ts';

const { questions } = currentRuleset;

/**
 * Whole forms: every question has a valid answer, hidden follow-ups too. The first byte says how
 * often an answer is a flagged one, so that every outcome turns up; the others are one answer each.
 */
export const wholeForms: fc.Arbitrary<Answers> = fc
	.uint8Array({ minLength: 1 + 2 * questions.length, maxLength: 1 + 2 * questions.length })
	.map(([habit, ...bytes]) => {
		const flaggedFrom = [255, 248, 240, 160][(habit ?? 0) % 4] ?? 255;
		return Object.fromEntries(
			questions.map((question, place) => [
				question.id,
				answerFrom(question, flaggedFrom, bytes[2 * place] ?? 0, bytes[2 * place + 1] ?? 0)
			])
		);
	});

function answerFrom(question: Question, flaggedFrom: number, one: number, two: number): Answer {
	if (question.kind === 'integer') return numberFrom(question.id, one, two);
	const [safe] = question.safe;
	const options = question.options.map(({ id }) => id);
	if (question.kind === 'single') {
		return one < flaggedFrom && safe !== undefined ? safe : options[two % options.length]!;
	}
	const ticks = question.options.filter(
		({ exclusive }, place) => !exclusive && (two >> (place % 8)) & 1
	);
	return one < flaggedFrom || ticks.length === 0 ? ['none'] : ticks.map(({ id }) => id);
}

function numberFrom(id: string, one: number, two: number): number {
	switch (id) {
		case 'age.years':
			return one < 8 ? one + 10 : 18 + (two % 75);
		case 'act.days':
			return one < 160 ? 3 + (two % 5) : two % 8;
		default:
			return one < 160 ? 30 + (two % 90) : two % 60;
	}
}

/** Orders that are not plain: from the mildest answer to the most careful one. */
const ladders: Readonly<Record<string, readonly (readonly string[])[]>> = {
	'plan.effort': [['walk'], ['walkrun'], ['hard']],
	'preg.ok': [['run'], ['walk', 'private'], ['no', 'not_sure']]
};

/** Every answer to one question that says more than this one, and nothing else. */
export function riskierAnswers(question: Question, answer: Answer): readonly Answer[] {
	if (question.kind === 'integer') {
		const wanted = Number(answer);
		const fewer = Array.from({ length: wanted }, (_, less) => less);
		return question.id === 'age.years'
			? [wanted + 1, wanted + 10, 95].filter((age) => age > wanted)
			: fewer;
	}
	if (question.kind === 'multi') {
		const ticked = (answer as readonly string[]).filter((id) => id !== 'none');
		return question.options
			.filter(({ id, exclusive }) => !exclusive && !ticked.includes(id))
			.map(({ id }) => [...ticked, id]);
	}
	const ladder = ladders[question.id] ?? [
		question.safe,
		question.options.map(({ id }) => id).filter((id) => !question.safe.includes(id))
	];
	const step = ladder.findIndex((answers) => answers.includes(String(answer)));
	return ladder.slice(step + 1).flat();
}

/** Things that are no answer to any question. */
export const nonsense: readonly unknown[] = [
	null,
	'',
	'maybe',
	'constructor',
	'__proto__',
	true,
	false,
	-1,
	0.5,
	1e9,
	Number.NaN,
	Number.POSITIVE_INFINITY,
	{},
	{ length: 1, 0: 'none' },
	[],
	new Array(1),
	[null],
	[['none']],
	['none', 'made up'],
	new Set(['none']),
	() => 'no',
	Symbol('no'),
	10n,
	new Date(0)
];
