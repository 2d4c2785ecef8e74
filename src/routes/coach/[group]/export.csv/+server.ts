import { csv } from '$lib/server/csv.ts';
import * as groupExport from '$lib/server/group-export.ts';
import { exported } from '$words/roster.ts';
import type { RequestHandler } from './$types';
import { needOwner } from '../need-group.ts';
import { notFound } from '../../../not-found.ts';

export const GET: RequestHandler = async (event) => {
	const { database, vault, coach, group, today } = await needOwner(event);
	const taken = await groupExport.of(database, vault, coach, group.id);
	if (taken === null) notFound();
	const rows = taken.members.map(({ name, addedOn, joinedOn, isSharing, attended }) => [
		name,
		addedOn,
		joinedOn ?? '',
		isSharing ? exported.yes : exported.no,
		String(attended.length),
		attended[0] ?? ''
	]);
	return new Response(csv([exported.columns, ...rows]), {
		headers: {
			// RFC 7111 and RFC 4180: the type, and that the first line names the columns.
			'content-type': 'text/csv; charset=utf-8; header=present',
			'content-disposition': `attachment; filename="runners-${today}.csv"`
		}
	});
};
