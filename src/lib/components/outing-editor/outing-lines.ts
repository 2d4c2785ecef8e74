import { isRepeated, type Outing, type OutingPhase } from '$lib/outing/outing.ts';
import { minutesAndSeconds } from '$words/dates.ts';
import { outingEditor as words } from '$words/outings.ts';
import { phases } from '$words/phases.ts';

/** An outing as lines to be read one beside another. */
export function outingLines({ name, parts }: Outing): readonly string[] {
	return [
		name,
		...parts.flatMap((part) =>
			isRepeated(part)
				? [words.repeatLine(part.times), ...part.phases.map((phase) => `– ${line(phase)}`)]
				: [line(part)]
		)
	];
}

function line({ kind, seconds, target, speedKmh, inclinePercent, cue }: OutingPhase): string {
	const rest = [
		target === null ? null : words.bandLine(target.low * 100, target.high * 100),
		speedKmh === null ? null : words.speedLine(speedKmh),
		inclinePercent === null ? null : words.inclineLine(inclinePercent),
		cue === '' ? null : words.cueLine(cue)
	];
	return [`${phases[kind].name} ${minutesAndSeconds(seconds)}`, ...rest]
		.filter((part) => part !== null)
		.join(', ');
}
