/**
 * Small things that stay on this phone, as JSON; no number of a runner's stays, but for an entry on its
 * way into the phone's database. Never throws.
 */
export function keepHere(name: string, kept: unknown): void {
	try {
		localStorage.setItem(`breathmark-${name}`, JSON.stringify(kept));
	} catch {
		// A browser that keeps nothing: the page works until it is closed.
	}
}

/** What was kept, or null. Its shape is for the caller to check: an older app may have kept it. */
export function keptHere(name: string): unknown {
	try {
		return JSON.parse(localStorage.getItem(`breathmark-${name}`) ?? 'null');
	} catch {
		return null;
	}
}

export function forgetHere(name: string): void {
	try {
		localStorage.removeItem(`breathmark-${name}`);
	} catch {
		// Nothing was kept.
	}
}
