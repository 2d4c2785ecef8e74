import { redirect, type RequestEvent } from '@sveltejs/kit';
import { concluded } from '$lib/screening/concluded.ts';
import { evaluate } from '$lib/screening/evaluate.ts';
import { rulesetById } from '$lib/screening/rulesets/index.ts';
import type { Answers } from '$lib/screening/types.ts';
import type { Signed } from '$lib/server/auth.ts';
import * as screenings from '$lib/server/screenings.ts';
import { visitor } from '$lib/server/visitor.ts';

/** What the rules make of a form, worked out here and never taken from the browser. */
export function decide(answers: Answers, rulesetId: string): screenings.Decision {
	const ruleset = rulesetById(rulesetId);
	const evaluation = evaluate(ruleset, answers);
	if (evaluation.status === 'NOT_ELIGIBLE') return { kind: 'not-eligible' };
	const result = concluded(ruleset, answers);
	if (evaluation.status === 'INCOMPLETE' || result === null) return { kind: 'incomplete' };
	const pulseOff = evaluation.status === 'EMERGENCY' || evaluation.pulse === 'off';
	return { kind: 'result', result, pulseOff };
}

/** Turns the open form into a result and leads to it. Pressed twice, it leads to the same one. */
export async function finish(event: RequestEvent, runner: Signed): Promise<never> {
	const { house, now } = event.locals;
	const { timeZone } = await visitor(house, runner, event.cookies);
	const { database, vault } = house;
	const done = await screenings.complete(
		database,
		vault,
		runner.runnerId,
		{ decide, timeZone },
		now
	);
	if (done.kind === 'incomplete') redirect(303, '/screening/check');
	redirect(303, '/screening/result');
}
