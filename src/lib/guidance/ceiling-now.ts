import type { SettlingIn } from '../outing/settling-in.ts';
import type { OpenAccess } from './pulse-basis.ts';

/** The most that is open at this moment: vigorous only where screening says so and settling in is over. */
export function ceilingNow(access: OpenAccess, settling: SettlingIn): 'moderate' | 'vigorous' {
	return settling.kind !== 'going-on' && access.ceiling === 'vigorous' ? 'vigorous' : 'moderate';
}
