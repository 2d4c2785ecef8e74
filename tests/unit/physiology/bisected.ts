/** The time at which a rising function passes a level, by halving: no formula involved. */
export function bisected(rising: (seconds: number) => number, level: number): number {
	let low = 0;
	let high = 20_000;
	for (let halving = 0; halving < 80; halving++) {
		const middle = (low + high) / 2;
		if (rising(middle) < level) low = middle;
		else high = middle;
	}
	return low;
}
