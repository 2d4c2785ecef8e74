import { baseline, type Answers } from './walk.ts';

/** Answers that no other page or number could hold by chance, with every follow-up they open. */
export const distinctive: Answers = {
	...baseline,
	'age.years': 43,
	'act.minutes': 577,
	'dizzy.balance': 'yes',
	'dizzy.breathing': 'yes',
	'cond.list': ['lung', 'spine'],
	'cond.lung': ['attack'],
	'cond.spine': ['spikes'],
	'bp.told': 'yes',
	'bp.hard': 'no',
	'bp.last': 'dont_know',
	'meds.rate': 'yes',
	'meds.why': 'told',
	'preg.status': 'private',
	'preg.ok': 'private'
};
