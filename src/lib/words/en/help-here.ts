/** Where help is and who gives it, as a group's pages, phones and paper name it. */
export const helpHere = {
	meetingPoint: 'Meeting point',
	defibrillator: 'Nearest defibrillator',
	firstAider: 'First aider'
};
