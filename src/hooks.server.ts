import { sequence } from '@sveltejs/kit/hooks';
import type { ServerInit } from '@sveltejs/kit';
import { closeHouse, house } from '$lib/server/house.ts';
import { answersAgainOnly } from './perimeter/answers-again-only.ts';
import { compressed } from './perimeter/compressed.ts';
import { explainFault } from './perimeter/explain-fault.ts';
import { neverKept } from './perimeter/never-kept.ts';
import { onlyMadeUp } from './perimeter/only-made-up.ts';
import { openOrShut } from './perimeter/open-or-shut.ts';
import { pageLook } from './perimeter/page-look.ts';
import { readableForm } from './perimeter/readable-form.ts';
import { safeConnection } from './perimeter/safe-connection.ts';
import { sameOrigin } from './perimeter/same-origin.ts';
import { whoAsks } from './perimeter/who-asks.ts';

// Opened at start, so that a bad folder or key is told at once and not to the first visitor.
export const init: ServerInit = async () => {
	await house();
	process.once('sveltekit:shutdown', () => void closeHouse());
};

export const handle = sequence(
	neverKept,
	compressed,
	safeConnection,
	sameOrigin,
	readableForm,
	whoAsks,
	answersAgainOnly,
	onlyMadeUp,
	openOrShut,
	pageLook
);
export const handleError = explainFault;
