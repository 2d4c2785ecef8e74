/** One piece of work, timed beside a plain reference in the same run, and the time it must reach. */
export interface BenchCase {
	readonly name: string;
	readonly work: () => unknown;
	/** Work that any machine does at its own speed: it tells a slow machine from slow code. */
	readonly reference: { readonly name: string; readonly work: () => unknown };
	readonly mustReachMicroseconds: number;
}
