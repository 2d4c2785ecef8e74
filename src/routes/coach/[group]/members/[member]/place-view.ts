import type { MemberPlace } from '$lib/server/member-place.ts';
import { dayAndTime } from '$words/dates.ts';

/** What the page of a runner shows of their place in the programme; null without a programme. */
export function placeView(place: MemberPlace | null, { timeZone }: { readonly timeZone: string }) {
	if (place === null) return null;
	const { programmeId, group, own, numbered, history } = place;
	const numbers = numbered.map(({ number }) => number);
	return {
		programmeId,
		changes: history.length,
		onDate: group.onDate,
		group: { number: group.number, name: group.outing.name },
		own: { number: own.number, name: own.outing.name },
		outingsAhead: own.number - group.number,
		earlier: numbers.filter((number) => number < own.number).at(-1) ?? null,
		later: numbers.find((number) => number > own.number) ?? null,
		options: numbered.map(({ number, outing }) => ({ number, name: outing.name })),
		history: history.map(({ outingsAhead, setAt, setByName }) => ({
			setAt,
			when: dayAndTime(setAt, timeZone),
			by: setByName,
			outingsAhead
		}))
	};
}
