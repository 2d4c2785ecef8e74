import * as memberBands from '$lib/server/member-bands.ts';
import type { PageServerLoad } from './$types';
import { needPrintable } from '../need-printable.ts';
import { notFound } from '../../../not-found.ts';
import { memberCard } from './member-card.ts';

export const load: PageServerLoad = async (event) => {
	const { house, coach, group, now } = await needPrintable(event);
	const seen = (await memberBands.list(house, coach, group.id, now)) ?? notFound();
	const cards = seen.flatMap((member) => memberCard(member, group) ?? []);
	return { cards, without: seen.length - cards.length };
};
