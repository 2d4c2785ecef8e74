/** Fields that a button may fill in. */
const FIELDS = new Set([
	'weeks',
	'firstRun',
	'goalKind',
	'goalMinutes',
	'goalKilometres',
	'goalRun',
	'startsOn',
	'weekdays'
]);

/** The name of a button that fills in what would work; its value is written like an address. */
export const FILL_IN = 'take';

/** Puts what a button holds into the form that it was pressed in, and leaves the rest as typed. */
export function fillIn(form: FormData): void {
	const sent = form.get(FILL_IN);
	const held = new URLSearchParams(typeof sent === 'string' ? sent : '');
	for (const field of new Set(held.keys())) {
		if (!FIELDS.has(field)) continue;
		form.delete(field);
		for (const value of held.getAll(field)) form.append(field, value);
	}
}

export const held = (fields: Readonly<Record<string, string | readonly string[]>>): string =>
	new URLSearchParams(
		Object.entries(fields).flatMap(([field, value]) =>
			[value].flat().map((one): [string, string] => [field, one])
		)
	).toString();
