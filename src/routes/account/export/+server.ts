import * as account from '$lib/server/account.ts';
import { notFound } from '../../not-found.ts';
import type { RequestHandler } from './$types';

/** Everything that is held of whoever asks, as one JSON file. */
export const GET: RequestHandler = async ({ locals: { house, runner, now } }) => {
	if (runner === null) notFound();
	const all = await account.exportAll(house.database, house.vault, runner.runnerId, now);
	return new Response(JSON.stringify(all, null, '\t'), {
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'content-disposition': 'attachment; filename="breathmark.json"'
		}
	});
};
