import { error } from '@sveltejs/kit';
import * as account from '$lib/server/account.ts';
import type { RequestHandler } from './$types';

/** Everything that is held of whoever asks, as one JSON file. */
export const GET: RequestHandler = async ({ locals: { house, runner, now } }) => {
	if (runner === null) error(404, { code: 'not-found', message: 'not-found' });
	const all = await account.exportAll(house.database, house.vault, runner.runnerId, now);
	return new Response(JSON.stringify(all, null, '\t'), {
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'content-disposition': 'attachment; filename="breathmark.json"'
		}
	});
};
