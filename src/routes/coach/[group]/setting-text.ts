import { coachBands } from '$words/coach-bands.ts';
import type { SettingView } from './entry-view.ts';

/** A setting in one line, such as "50–62 % of reserve, feels 5–6 of 10". */
export function settingText({ percent, effort }: SettingView): string {
	const feels = coachBands.effortOf(effort.low, effort.high);
	return percent === null
		? feels
		: `${coachBands.percentRange(percent.low, percent.high)}, ${feels}`;
}
