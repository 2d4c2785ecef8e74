import type { Effort } from '../../physiology/effort-scale.ts';
import type { Hold } from './asked.ts';
import type { TalkHeard } from './outing-facts.ts';

/** Something about an outing that decides what comes next time. */
export type Fact =
	| { readonly kind: 'felt-wrong' | 'pain' | 'pain-stands' | 'hot' | 'ended-early' | 'no-end' }
	/** Nothing is raised, however it went. */
	| { readonly kind: 'held'; readonly why: Hold }
	| { readonly kind: 'unfinished'; readonly count: number; readonly of: number }
	/** How many phases talk broke off in. */
	| { readonly kind: 'broke-off'; readonly phases: number }
	/** The highest that was told; null for none. */
	| { readonly kind: 'effort'; readonly effort: Effort | null }
	/** Share of the measured time. */
	| { readonly kind: 'over-band'; readonly share: number }
	/** The hardest that was heard. */
	| { readonly kind: 'talk'; readonly talk: TalkHeard }
	| { readonly kind: 'answered'; readonly answered: number; readonly of: number }
	/** How often this very outing went well. */
	| { readonly kind: 'times'; readonly times: number }
	| { readonly kind: 'gap'; readonly days: number };
