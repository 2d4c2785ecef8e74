import { stopSigns } from './stop-signs.ts';

export const safety = {
	title: 'Signs to stop',
	lead: 'You can stop at any time. You never need to give a reason.',
	nowTitle: 'Stop and call for help now',
	now: Object.values(stopSigns.now),
	todayTitle: 'Stop, and see a doctor today',
	today: Object.values(stopSigns.today),
	restTitle: 'Stop, rest, and ask before the next outing',
	rest: Object.values(stopSigns.rest),
	talkTitle: 'Ease off',
	talk: Object.values(stopSigns.talk),
	call: 'Number to call',
	nobody: 'No number is chosen yet.',
	basis:
		'From published stop signs of heart, sports medicine and ambulance bodies, in our own words. Local rules and what your own doctor told you come first.',
	afterTitle: 'After an outing',
	after:
		'Walk for six minutes or more; do not stop dead. The same signs count in the hours afterwards.'
};
