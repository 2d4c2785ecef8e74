import { closed } from '../screening/closed-access.ts';
import type { Signed } from './auth.ts';
import type { House } from './open-house.ts';
import { standing, type Standing } from './standing.ts';

/**
 * The one screening gate. Everything that shows or computes a personal effort number asks it: the
 * door asks for the route, and the code that reads the numbers asks again. Nobody without an account
 * has a result.
 */
export async function gate(
	house: Pick<House, 'database' | 'vault'>,
	runner: Signed | null,
	now: number
): Promise<Standing> {
	// With another key no session can be read either: whoever asks looks like nobody.
	if (house.vault.state === 'wrong-key') return { ...closed('NO_RESULT'), fault: 'vault' };
	if (runner === null) return closed('NO_RESULT');
	return standing(house.database, house.vault, runner.runnerId, now);
}
