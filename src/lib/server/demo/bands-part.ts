import { addDays } from '../../calendar/local-date.ts';
import * as bandDoubts from '../band-doubts.ts';
import { setMemberBand } from '../set-member-band.ts';
import { noonOf, type DemoPart } from './parts.ts';

/** Below the usual 50 to 62 % of reserve (phaseTargets), and one step of effort. Made up. */
const EASY_RUN = { lowFraction: 0.5, highFraction: 0.58, effortLow: 5, effortHigh: 5 };

/** One band that the coach set, with a note, and one that a runner has a doubt about. */
export const bandsOfCoach: DemoPart = async (group) => {
	const { words, coach, groupId, runners, today } = group;
	const meiLin = runners.get('mei-lin');
	const pavel = runners.get('pavel');
	if (!meiLin || !pavel) return;
	const wanted = {
		phase: 'steady-run',
		setting: EASY_RUN,
		runnerNote: words.bandNote.toRunner,
		innerNote: words.bandNote.inner
	} as const;
	const setAt = noonOf(addDays(today, -8));
	const answer = await setMemberBand(group, coach, groupId, meiLin.memberId, wanted, setAt);
	if (answer !== 'set') throw new Error(`the made-up band was not set: ${answer}`);
	const saidAt = noonOf(addDays(today, -1));
	await bandDoubts.say(group.database, pavel.runnerId, 'recovery-walk', 'too-easy', saidAt);
};
