import { expect, test } from 'vitest';
import { demo } from '$words/demo.ts';
import { tour } from '../../../src/routes/demo/tour.ts';
import { wordsOf } from './reading-grade.ts';

/**
 * Adults read English aloud at 183 words a minute on average: Brysbaert 2019, J Mem Lang 109:104047,
 * a meta-analysis of 77 studies (seen: its abstract).
 */
const ALOUD_A_MINUTE = 183;
/** Who reads slower or in a second language has time left. Our own choice, no source. */
const OURS_A_MINUTE = 150;
/** Our own rule, no source. */
const MOST_STOPS = 8;

test('the whole tour is read aloud in a minute', () => {
	const said = tour.flatMap(({ id }) => {
		const words = demo.steps[id];
		return [words?.title ?? '', words?.text ?? ''];
	});
	const count = said.flatMap(wordsOf).length;
	expect(count).toBeGreaterThan(60);
	expect(OURS_A_MINUTE).toBeLessThan(ALOUD_A_MINUTE);
	expect(count / OURS_A_MINUTE).toBeLessThanOrEqual(1);
});

test('each stop has its words, once, and there are no more than one keeps in mind', () => {
	expect(tour.length).toBeLessThanOrEqual(MOST_STOPS);
	expect(tour.map(({ id }) => id).sort()).toEqual(Object.keys(demo.steps).sort());
});
