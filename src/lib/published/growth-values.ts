import { growthEvidence } from '../physiology/growth-evidence.ts';
import type { SourceId } from '../physiology/sources.ts';
import { published, type PublishedValue, type Subject, type Subjects } from './published-value.ts';

const { fastGrowth, tenPercent } = growthEvidence;

const runnersIn = (study: keyof typeof growthEvidence) => growthEvidence[study].runners;
const injuredIn = () => fastGrowth.injured;
const hazardRatio = (which: 'hazardRatio' | 'low' | 'high') => fastGrowth[which];
const fastFromPercent = () => fastGrowth.overPercentInTwoWeeks;
const injuredPercent = (which: 'injuredPercent' | 'injuredPercentUsual') => tenPercent[which];

/** Printed in the abstracts, so nothing is allowed to differ. */
function printed<Inputs extends readonly unknown[]>(
	name: string,
	fn: (...inputs: Inputs) => number,
	inputs: Inputs,
	value: number,
	source: SourceId
): PublishedValue {
	return published(name, fn, inputs, value, 0, source, 'seen');
}

export const rows: readonly PublishedValue[] = [
	printed('new runners who were followed', runnersIn, ['fastGrowth'], 874, 'nielsen2014'),
	printed('of them injured', injuredIn, [], 202, 'nielsen2014'),
	printed('growth in two weeks that was looked at', fastFromPercent, [], 30, 'nielsen2014'),
	printed('hazard ratio', hazardRatio, ['hazardRatio'], 1.59, 'nielsen2014'),
	printed('low end of its interval', hazardRatio, ['low'], 0.96, 'nielsen2014'),
	printed('high end of its interval', hazardRatio, ['high'], 2.66, 'nielsen2014'),
	printed('new runners who were followed', runnersIn, ['tenPercent'], 532, 'buist2008'),
	printed('injured, 10 % a week', injuredPercent, ['injuredPercent'], 20.8, 'buist2008'),
	printed('injured, usual growth', injuredPercent, ['injuredPercentUsual'], 20.3, 'buist2008')
];

/** What each function above stands for. */
export const subjects: Subjects = new Map<unknown, Subject>([
	[runnersIn, { formula: 'growth', unit: 'answer' }],
	[injuredIn, { formula: 'growth', unit: 'answer' }],
	[hazardRatio, { formula: 'growth', unit: 'answer' }],
	[fastFromPercent, { formula: 'growth', unit: 'percent' }],
	[injuredPercent, { formula: 'growth', unit: 'percent' }]
]);
