import { plural } from './plural.ts';

/** What a guess came to, on the page of guesses and on the way. */
export const guessAnswers = {
	lastPulse: (guessed: number, seen: number) => `You guessed ${guessed}, and it was ${seen}.`,
	pulseOff: (off: number) => {
		if (off === 0) return 'Exactly right.';
		return `${Math.abs(off)} ${plural(Math.abs(off), { one: 'beat', other: 'beats' })} too ${off > 0 ? 'high' : 'low'}.`;
	},
	effortOff: (off: number) => {
		if (off === 0) return 'Your number and your talk fit.';
		const steps = `${Math.abs(off)} ${plural(Math.abs(off), { one: 'step', other: 'steps' })}`;
		return off > 0
			? `Your number is ${steps} higher than talk says. Both count: ease off if in doubt.`
			: `Your number is ${steps} lower than talk says. Talk comes first.`;
	}
};

/** Asked on the way, where there is time for a look and a tap. */
export const guessOnTheWay = {
	effort: 'Guess first. How hard is it, 0 to 10?',
	pulse: 'And your pulse? To the nearest ten.',
	noPulse: 'I do not know',
	guessed: (effort: number) => `You guessed effort ${effort}.`,
	guessedPulse: (effort: number, bpm: number) =>
		`You guessed effort ${effort} and about ${bpm} beats a minute.`
};
