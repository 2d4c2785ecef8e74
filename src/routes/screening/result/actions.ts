import type { Access } from '$lib/screening/access.ts';

/** A way on from a result: its name in the words, and where it leads. The first is the main one. */
export interface ResultAction {
	readonly name: 'bands' | 'doctor' | 'advice' | 'change' | 'well' | 'again' | 'start' | 'goOn';
	readonly href: string;
}

const bands: ResultAction = { name: 'bands', href: '/bands' };
const doctor: ResultAction = { name: 'doctor', href: '/screening/doctor' };
const advice: ResultAction = { name: 'advice', href: '/screening/advice' };
const change: ResultAction = { name: 'change', href: '/screening/change' };
const well: ResultAction = { name: 'well', href: '/screening/well' };
const again: ResultAction = { name: 'again', href: '/screening' };
const start: ResultAction = { name: 'start', href: '/screening' };
const goOn: ResultAction = { name: 'goOn', href: '/screening' };

/** Every result has a way on; none is a dead end. */
export function actionsFor(access: Access, draftIsOpen: boolean): readonly ResultAction[] {
	if (access.allowed) {
		const canBeLifted = access.liftable.some(({ roles }) => roles.length > 0);
		return canBeLifted ? [bands, advice, doctor, change] : [bands, advice, change];
	}
	switch (access.code) {
		case 'SEEK_ADVICE':
		case 'EMERGENCY':
			return [doctor, advice, draftIsOpen ? goOn : again];
		case 'WAIT':
			return [well, draftIsOpen ? goOn : again];
		case 'NO_RESULT':
		case 'INCOMPLETE':
		case 'NOT_ELIGIBLE':
			return [draftIsOpen ? goOn : start];
		case 'EXPIRED':
		case 'RESCREEN':
			return [draftIsOpen ? goOn : again];
	}
}
