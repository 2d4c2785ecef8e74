import { paper } from '$words/paper.ts';
import type { Card } from './card.ts';

/** What a card says of today beside the name, and until when. */
export function untilWords({
	may,
	until,
	settlingUntil,
	longestRun
}: Pick<Card, 'may' | 'until' | 'settlingUntil' | 'longestRun'>): string {
	const words = paper.card;
	if (settlingUntil !== null) return words.settling(settlingUntil, until);
	const result = words.until[may](until);
	return longestRun === null ? result : words.short(longestRun, result);
}
