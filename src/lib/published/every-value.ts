import * as capacity from './capacity-values.ts';
import * as effort from './effort-values.ts';
import * as growth from './growth-values.ts';
import * as intensity from './intensity-values.ts';
import * as maximum from './maximum-values.ts';
import * as metabolic from './metabolic-values.ts';
import type { PublishedValue, Subject } from './published-value.ts';
import * as pulseResponse from './pulse-response-values.ts';
import * as pulse from './pulse-values.ts';
import * as reserve from './reserve-values.ts';

export type SubjectValue = PublishedValue & Subject;

/** Every published value with the formula that it checks. */
export const everyValue: readonly SubjectValue[] = [
	maximum,
	reserve,
	intensity,
	effort,
	pulse,
	metabolic,
	capacity,
	pulseResponse,
	growth
].flatMap(({ rows, subjects }) =>
	rows.map((row) => {
		const subject = subjects.get(row.fn);
		if (subject === undefined) throw new Error(`nothing says what ${row.name} is about`);
		return { ...row, ...subject };
	})
);
