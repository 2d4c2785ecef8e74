/** What heat asks of an outing, mildest first. */
export const heatActions = ['usual', 'ease', 'walk-only', 'cancel'] as const;

export type HeatAction = (typeof heatActions)[number];

interface HeatStep {
	/** Degrees Celsius from which on it holds. */
	readonly fromCelsius: number;
	readonly action: HeatAction;
}

/**
 * Wet-bulb globe temperature, for people who are not used to heat (source armstrong2007, the column
 * for those not acclimatised: 25.7 to 27.8 more and longer breaks, 27.9 to 30.0 equal work and rest
 * and no hard effort, above that cancel; the lowest edge from memory). "Walk only" is our own choice
 * for "no hard effort".
 */
export const wetBulbSteps: readonly HeatStep[] = [
	{ fromCelsius: 25.7, action: 'ease' },
	{ fromCelsius: 27.9, action: 'walk-only' },
	{ fromCelsius: 30.1, action: 'cancel' }
];

/**
 * Heat index, in the shade. The edges are those of the classes of the US weather service (source
 * nwsHeatIndex: 80, 90 and 103 degrees Fahrenheit); what to do at each is our own choice, no source.
 */
export const heatIndexSteps: readonly HeatStep[] = [
	{ fromCelsius: 27, action: 'ease' },
	{ fromCelsius: 32, action: 'walk-only' },
	{ fromCelsius: 39, action: 'cancel' }
];

export interface Heat {
	/** Degrees Celsius, or null where it is not known. */
	readonly wetBulbCelsius: number | null;
	readonly heatIndexCelsius: number | null;
	/** A public heat warning is on: no running, whatever is measured. Common practice, no source. */
	readonly isWarned: boolean;
}

/**
 * What heat asks for: the stricter of all that is known wins.
 * @returns null where nothing is known
 * @example heatAction({ wetBulbCelsius: 26, heatIndexCelsius: 40, isWarned: false }) // 'cancel'
 * @example heatAction({ wetBulbCelsius: null, heatIndexCelsius: 20, isWarned: true }) // 'walk-only'
 * @throws RangeError for a temperature that is not a number
 */
export function heatAction({
	wetBulbCelsius,
	heatIndexCelsius,
	isWarned
}: Heat): HeatAction | null {
	const known = [
		wetBulbCelsius === null ? [] : [actionAt(wetBulbSteps, wetBulbCelsius)],
		heatIndexCelsius === null ? [] : [actionAt(heatIndexSteps, heatIndexCelsius)],
		isWarned ? ['walk-only' as const] : []
	].flat();
	if (known.length === 0) return null;
	return known.reduce((one, other) =>
		heatActions.indexOf(one) >= heatActions.indexOf(other) ? one : other
	);
}

function actionAt(steps: readonly HeatStep[], celsius: number): HeatAction {
	if (Number.isNaN(celsius)) throw new RangeError('heatAction requires numbers');
	return steps.findLast(({ fromCelsius }) => celsius >= fromCelsius)?.action ?? 'usual';
}
