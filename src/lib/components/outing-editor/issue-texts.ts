import type { OutingIssue } from '$lib/outing/check-outing.ts';
import { placesOf } from '$lib/outing/edit/place.ts';
import { phaseAt } from '$lib/outing/edit/place.ts';
import { fieldName, pathOf } from '$lib/outing/field-name.ts';
import type { Outing } from '$lib/outing/outing.ts';
import { outingEditor as words } from '$words/outings.ts';

/** Each issue with the phase that it is in, and the field to go to. */
export function issueTexts(issues: readonly OutingIssue[], outing: Outing) {
	const places = placesOf(outing);
	return issues.map(({ code, path }) => {
		const text = words.issues[code] ?? code;
		const field = fieldName(path);
		const index = places.findIndex((place) => field.startsWith(`${fieldName(pathOf(place))}-`));
		const place = places[index];
		if (place === undefined) return { field, text };
		const { kind } = phaseAt(outing, place);
		return { field, text: words.fieldOf(words.phase(index + 1, kind), text) };
	});
}
