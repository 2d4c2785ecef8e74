import type { StepRefusal } from '$lib/guidance/step-refusal.ts';
import { plural } from './plural.ts';

const outings = (count: number) => plural(count, { one: 'one outing', other: `${count} outings` });

/** Where a runner stands beside the group: "two outings behind the group". */
export const besideGroup = (ahead: number) =>
	ahead === 0
		? 'with the group'
		: ahead < 0
			? `${outings(-ahead)} behind the group`
			: `${outings(ahead)} ahead of the group`;

/** At which outing of the programme a runner stands. */
export const memberPlace = {
	title: 'Place in the programme',
	none: 'The group has no outing of a programme to come.',
	notShared: 'This runner shares nothing with you, so no place stands here.',
	group: (name: string, date: string) => `The group’s next outing, on ${date}: ${name}.`,
	own: (name: string, beside: string) => `For this runner: ${name}, ${beside}.`,
	shortRuns: (longest: string) =>
		`They settled in not long ago, so their runs last ${longest} at most for now, whatever the outing says.`,
	walks: 'They walk for now: each run of the outing is a brisk walk.',
	closed: 'Their result is not open now, so they can only be put at an earlier outing.',
	earlier: 'One outing earlier',
	later: 'One outing later',
	back: 'Back with the group',
	choose: 'Or put them at',
	go: 'Put them there',
	kept: 'Kept.',
	moves: 'From there on they move on with the group, outing by outing.',
	history: 'Who changed it',
	row: (when: string, name: string, beside: string) => `${when}, ${name}: ${beside}`,
	refused: {
		'settling-in':
			'Not yet: they are settling in and walk for now. Outings with longer runs come after that.',
		'runs-too-long':
			'Not yet: the longest run there is longer than theirs may be for now. Choose an earlier outing.',
		closed:
			'Not now: their result is not open. They can only be put at an outing whose runs are no longer.',
		'changed-meanwhile':
			'Somebody else changed it meanwhile, and nothing of yours was kept. Where they stand now is shown here.'
	} satisfies Record<StepRefusal | 'changed-meanwhile', string>
};
