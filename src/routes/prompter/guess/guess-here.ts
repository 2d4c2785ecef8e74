import { keepHere, keptHere } from '$lib/device/on-this-phone.ts';
import type { Player } from '../player.svelte.ts';
import { answerAbout } from '../talk-answer.ts';

const NAME = 'guess';

/** Whether this phone is set to guess first, then look. */
export const isGuessing = (): boolean => keptHere(NAME) === true;

export const keepGuessing = (isOn: boolean) => keepHere(NAME, isOn);

/** Whether the guess that is asked for now was given, and what was guessed may be seen. */
export function isGuessed({ talk, entries }: Pick<Player, 'talk' | 'entries'>): boolean {
	return talk !== null && answerAbout(talk, entries)?.guessedBpm !== undefined;
}

/** What somebody on the move can tap: to the nearest ten. */
export const guessableBpm: readonly number[] = [
	80, 90, 100, 110, 120, 130, 140, 150, 160, 170, 180, 190
];
