/** Who may ask. Ines and Odile are the runner and the owner; what is walled in is theirs. */
export const persons = [
	'nobody',
	'runner',
	'otherRunner',
	'owner',
	'helper',
	'otherCoach',
	'host'
] as const;
export type Person = (typeof persons)[number];

/**
 * What comes back. `done`: the page, or what the form was for. `door`: a page leads to the coach's
 * sign-in, a form is refused. `in vain`: of one's own, as if it were done, and there was nothing to
 * do. `gate`: the same as `door`, to the result. `to ...`: it leads there, and nothing
 * happened.
 */
export type Outcome = 'done' | 'in vain' | '404' | '403' | '400' | 'door' | 'gate' | `to ${string}`;

export type Fields = Readonly<Record<string, string | number | readonly string[]>>;

/** What stands in the made world, by name. */
export type Ids = Readonly<Record<IdName, string>>;
export type IdName =
	| 'group'
	| 'member'
	| 'doubt'
	| 'advice'
	| 'plan'
	| 'ownPlan'
	| 'removedPlan'
	| 'planned'
	| 'programme'
	| 'ownRemovedPlan'
	| 'link'
	| 'linkToken'
	| 'coachLink'
	| 'coachLinkToken'
	| 'houseLink'
	| 'helper'
	| 'owner'
	| 'passkey'
	| 'coachPasskey'
	| 'session'
	| 'coachSession'
	| 'guess'
	| 'pastRun'
	| 'today';

interface More {
	/** What is sent with it; what is named here is always Ines's or Odile's. */
	readonly sends?: (ids: Ids) => Fields;
	/** After the path, for what is asked for there. */
	readonly query?: (ids: Ids) => string;
	/** It changes nothing, whoever asks. */
	readonly onlyReads?: true;
	/** Sent as this, and not as a form. */
	readonly as?: 'json';
	/** Who gets another answer than the rule says. */
	readonly but?: Partial<Record<Person, Outcome>>;
	/** Who holds the link of the address may know that it is there. */
	readonly byLink?: true;
	/** Who may read something of Ines's or of the group's in the answer, beside those who are in it. */
	readonly toldTo?: readonly Person[];
}

/** One line of the table: what each person gets, and who is inside of the wall. */
export interface Wall extends Omit<More, 'but'> {
	readonly gets: Readonly<Record<Person, Outcome>>;
	/** Whose it is: they may see what is Ines's or the group's, and change it. */
	readonly inside: readonly Person[];
}

/** For each way of asking: `page`, `?/action`, or a method. */
export type Walls = Readonly<Record<string, Readonly<Record<string, Wall>>>>;

type Rule = (more?: More) => Wall;

export const rule =
	(inside: readonly Person[], usual: Outcome, own: Partial<Record<Person, Outcome>>): Rule =>
	({ but = {}, ...more } = {}) => ({
		...more,
		inside,
		gets: Object.fromEntries(
			persons.map((one) => [one, but[one] ?? own[one] ?? usual])
		) as Wall['gets']
	});

const runners = { runner: 'done', otherRunner: 'done' } as const;
const noCoach = { nobody: 'door', runner: 'door', otherRunner: 'door' } as const;

/** The same for all, and nothing of anybody in it. */
export const anybody = rule([], 'done', {});
/** To nobody. */
export const missing = rule([], '404', {});
/** A runner's own, each for themselves. Whoever is none is led away. */
export const ownFor = (elsewhere: Outcome) => rule(['runner'], elsewhere, runners);
/** A runner's own, behind the gate. */
export const gated = ownFor('gate');
/** Behind the gate, and one row of Ines's. */
export const herOwn = rule(['runner'], 'gate', { runner: 'done', otherRunner: '404' });
/** A coach's own, each for themselves. */
export const desk = rule(['owner'], 'done', noCoach);
/** Every coach of the group, a helper too. */
export const leads = rule(['owner', 'helper'], '404', {
	...noCoach,
	owner: 'done',
	helper: 'done'
});
/** Owners of the group alone; a helper is of the group, and this is not there. */
export const decides = rule(['owner', 'helper'], '404', { ...noCoach, owner: 'done' });

export const everyCoach = (outcome: Outcome) => ({
	owner: outcome,
	helper: outcome,
	otherCoach: outcome,
	host: outcome
});
