import { expect, test } from 'vitest';
import { rosterStateWords } from '$lib/guidance/roster-next.ts';
import { coachBands } from '$words/coach-bands.ts';
import { join } from '$words/join.ts';
import { stateWords } from '$words/roster.ts';

// Whoever joins agrees to what the coach will read: the page has the coach's own words. Our own rule,
// no source.

const told = join.sees.join(' ');
// Whoever turns out to be under age has no result and no open answers: nothing is left to tell.
const notOfSharing = ['not-joined', 'not-shared', 'not-for-this-app'];
const ofSharing = rosterStateWords.filter((word) => !notOfSharing.includes(word));

test.each(ofSharing)('whoever joins reads that a coach may read "%s" of them', (word) => {
	expect(told).toContain(`“${stateWords[word]}”`);
});

test('whoever joins reads that a coach may read of a band set outside this group', () => {
	const inCoachsWords = 'set outside this group';
	expect(coachBands.elsewhere).toContain(inCoachsWords);
	expect(told).toContain(inCoachsWords);
});
