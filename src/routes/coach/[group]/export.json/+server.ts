import * as groupExport from '$lib/server/group-export.ts';
import type { RequestHandler } from './$types';
import { needOwner } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';

export const GET: RequestHandler = async (event) => {
	const { database, vault, coach, group, today } = await needOwner(event);
	const taken = await groupExport.of(database, vault, coach, group.id);
	if (taken === null) notFound();
	return new Response(JSON.stringify(taken, null, '\t'), {
		headers: {
			'content-type': 'application/json',
			'content-disposition': `attachment; filename="group-${today}.json"`
		}
	});
};
