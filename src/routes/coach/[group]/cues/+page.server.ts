import { lengthOf, plainOuting, startsOf } from '$lib/outing/plain-outing.ts';
import { phaseTargets } from '$lib/outing/phase.ts';
import type { PageServerLoad } from './$types';
import { needPrintable } from '../need-printable.ts';

export const load: PageServerLoad = async (event) => {
	const { group, emergencyNumber } = await needPrintable(event);
	const { name, meetingPoint, defibrillator, firstAider } = group;
	const starts = startsOf(plainOuting);
	return {
		group: { name, emergencyNumber, meetingPoint, defibrillator, firstAider },
		outing: plainOuting.map(({ kind, seconds }, i) => ({
			kind,
			seconds,
			startSeconds: starts[i] ?? 0,
			effort: phaseTargets[kind].effort
		})),
		length: lengthOf(plainOuting)
	};
};
