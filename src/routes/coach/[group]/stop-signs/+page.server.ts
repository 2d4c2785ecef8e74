import type { PageServerLoad } from './$types';
import { needPrintable } from '../need-printable.ts';

export const load: PageServerLoad = async (event) => {
	const { group, emergencyNumber } = await needPrintable(event);
	const { name, meetingPoint, defibrillator, firstAider } = group;
	return { group: { name, emergencyNumber, meetingPoint, defibrillator, firstAider } };
};
