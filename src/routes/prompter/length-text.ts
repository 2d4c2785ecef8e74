import { phasesOf, type Outing } from '$lib/outing/outing.ts';
import { lengthOf } from '$lib/outing/plain-outing.ts';
import { minutesAndSeconds } from '$words/dates.ts';
import { prompter } from '$words/prompter.ts';

/** How long an outing is, and how much of it is running, in a line. */
export function lengthText(outing: Outing): string {
	const phases = phasesOf(outing);
	const { seconds, longestRunSeconds } = lengthOf(phases);
	const runs = phases.filter(({ kind }) => kind === 'steady-run').length;
	const longest = minutesAndSeconds(longestRunSeconds);
	return prompter.choose.length(Math.round(seconds / 60), runs, longest);
}
