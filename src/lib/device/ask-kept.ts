import type { KeptForRunner } from '$lib/outing/kept.ts';

export type AskedKept =
	| { readonly kind: 'open'; readonly kept: KeptForRunner<unknown> }
	/** The gate is shut, or nobody is signed in. */
	| { readonly kind: 'closed' }
	/** No network, a slow one, or a server in trouble: what is kept here decides. */
	| { readonly kind: 'not-reached' };

/** A network that takes longer is as good as none. Our own choice. */
const PATIENCE_MS = 4000;

/** Asks the server what this phone may keep. A closed gate leads away, or refuses. */
export async function askKept(): Promise<AskedKept> {
	try {
		const answer = await fetch('/prompter/kept', {
			redirect: 'manual',
			signal: AbortSignal.timeout(PATIENCE_MS)
		});
		if (answer.type === 'opaqueredirect' || (answer.status >= 400 && answer.status < 500)) {
			return { kind: 'closed' };
		}
		if (!answer.ok) return { kind: 'not-reached' };
		return { kind: 'open', kept: (await answer.json()) as KeptForRunner<unknown> };
	} catch {
		return { kind: 'not-reached' };
	}
}
