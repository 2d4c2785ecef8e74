import { growthFigures } from '../../src/lib/outing/programme/growth-evidence.ts';
import { published } from './published-value.ts';

/* What new runners' injuries have to do with how fast their running grows. */

export const rows = [
	published(
		'injuries that distance brings, over 30 % in two weeks against under 10 %',
		growthFigures,
		['fastGrowth'],
		{ runners: 874, injured: 202, hazardRatio: 1.59, low: 0.96, high: 2.66 },
		0,
		'nielsen2014',
		'seen'
	),
	published(
		'injured in a hundred, growing by 10 % a week and as usual',
		growthFigures,
		['tenPercent'],
		{ runners: 532, injuredPercent: 20.8, injuredPercentUsual: 20.3 },
		0,
		'buist2008',
		'seen'
	)
];
