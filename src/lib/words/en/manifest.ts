/** What a phone shows of the app that was put on its home screen. */
export const manifest = {
	description: 'First questions, then your own effort bands.',
	startOuting: 'Start an outing'
};
