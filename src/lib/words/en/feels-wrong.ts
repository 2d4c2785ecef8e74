/** Always there while somebody moves with a page of ours. */
export const feelsWrong = {
	title: 'Something feels wrong',
	first: 'Stop. Step off, hold on to something, sit down.',
	signs:
		'Chest pain or pressure, short breath that does not settle, faintness, confusion or weakness on one side: call now.',
	urgent: 'I have an urgent sign',
	change: 'My health changed',
	all: 'All signs to stop'
};
