import { coachBands } from '$words/coach-bands.ts';
import type { BandFormView } from './band-form.ts';

/** What is wrong with a field, in words; where it went too far, where that field ends and why. */
export function issueText(
	code: string,
	field: string,
	{ ends, phase }: Pick<BandFormView, 'ends' | 'phase'>
): string {
	if (code === 'beyond') {
		const { reserve, effort } = ends;
		return field === 'highPercent'
			? coachBands.ends.reserve[reserve.because](Math.round(reserve.highest * 100), phase)
			: coachBands.ends.effort[effort.because](effort.highest);
	}
	return coachBands.issues[code] ?? code;
}
