import { hashToken } from '$lib/server/tokens.ts';

/** Whose tab it is, for what is typed and not yet sent. It tells nothing else. */
export const tabOwner = (runnerId: string): string => hashToken(runnerId).slice(0, 16);
