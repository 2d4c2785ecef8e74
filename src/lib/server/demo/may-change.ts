import type { House } from '../open-house.ts';
import { comesFromThisComputer, type Asked } from '../this-computer.ts';
import { isEmptyHouse } from './demo.ts';

type Here = Pick<House, 'environment' | 'database' | 'vault'>;

/**
 * Whether a press may bring the made-up group in, or take it away: only on the computer that runs
 * the server. Where others can reach the house its host decides, by a command: a stranger shall
 * neither fill an empty house, nor empty it and become its first coach.
 */
export const mayChange = ({ environment }: Pick<Here, 'environment'>, asked: Asked): boolean =>
	environment.origin === null && comesFromThisComputer(asked, environment);

/** Whether a press may bring it in now: nobody is here, and health data can be sealed. */
export async function mayLoad(house: Here, asked: Asked): Promise<boolean> {
	const { vault, database } = house;
	return mayChange(house, asked) && vault.state === 'right' && (await isEmptyHouse(database));
}
