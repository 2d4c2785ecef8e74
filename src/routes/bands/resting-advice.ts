import type { Profile } from '$lib/server/profiles.ts';

/** Two mornings out of range turn the pulse off until somebody looked at it. */
export function needsRestingAdvice(
	{ restingAskFirstSince }: Pick<Profile, 'restingAskFirstSince'>,
	coveredReasons: readonly string[]
): boolean {
	return restingAskFirstSince !== null && !coveredReasons.includes('H-REST');
}
