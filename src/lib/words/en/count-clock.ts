/** On the clock for counting the pulse, which also comes in the middle of an outing. */
export const countClock = {
	start: 'Start counting',
	stop: 'Stop the clock',
	left: (seconds: number) => `${seconds} s left`,
	done: 'Time is up. How many beats did you count?'
};
