import type { HealthEvent } from './types.ts';

/** For how long "I ticked this by mistake" is taken. Our own rule. */
export const TAKE_BACK_MS = 10 * 60 * 1000;

/**
 * Whether an urgent sign still counts. It was taken back only if that happened within ten minutes;
 * anything else, a time that cannot be read too, leaves it standing.
 */
export function eventStands({ happenedAt, withdrawnAt }: HealthEvent): boolean {
	if (withdrawnAt === null) return true;
	const after = withdrawnAt - happenedAt;
	return !(after >= 0 && after <= TAKE_BACK_MS);
}
