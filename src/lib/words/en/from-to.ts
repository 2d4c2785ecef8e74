/** A range of numbers: "5–6", and "5" where both ends are the same. */
export const fromTo = (low: number, high: number): string =>
	low === high ? String(low) : `${low}–${high}`;
