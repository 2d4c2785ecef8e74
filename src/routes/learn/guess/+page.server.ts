import { error, fail, redirect } from '@sveltejs/kit';
import { guessByTalkForm, guessForm, lookByTalkForm, lookForm } from '$lib/forms/learn.ts';
import { readForm, type FormAnswer } from '$lib/forms/read-form.ts';
import { gettingCloser } from '$lib/guidance/guess.ts';
import { limits, withinPlausible } from '$lib/physiology/limits.ts';
import { pulseFromCount } from '$lib/physiology/pulse-count.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import * as guesses from '$lib/server/guesses.ts';
import { needGuidance } from '../need-guidance.ts';
import type { Actions, PageServerLoad } from './$types';
import { guessView } from './guess-view.ts';

const HERE = '/learn/guess';

async function opened(event: Parameters<typeof needGuidance>[0]) {
	const asked = await needGuidance(event);
	return { ...asked, showsPulse: asked.guidance.pulse.kind !== 'off' };
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, now, guidance, showsPulse } = await opened(event);
	const { database, vault } = house;
	const open = await guesses.open(database, vault, runner.runnerId, now);
	const looked = (await guesses.list(database, vault, runner.runnerId))
		.map((guess) => guessView(guess, showsPulse))
		.filter((view) => view !== null);
	const withPulse = looked.flatMap(({ pulse }) => (pulse === null ? [] : [pulse.off]));
	const off = (showsPulse ? withPulse : looked.map((view) => view.effortOff)).toReversed();
	const closer = gettingCloser(off);
	return {
		showsPulse,
		phases: guidance.phases.map(({ kind }) => kind),
		open: open && {
			phase: open.phase,
			effort: open.effort,
			pulseBpm: showsPulse ? open.pulseBpm : null
		},
		looked,
		off,
		closer: closer && {
			first: roundHalfUp(closer.first, 0),
			last: roundHalfUp(closer.last, 0)
		}
	};
};

export const actions: Actions = {
	guess: async (event) => {
		const { house, runner, now, today, guidance, showsPulse } = await opened(event);
		const form = await event.request.formData();
		const read = showsPulse
			? readForm(form, guessForm)
			: withoutPulse(readForm(form, guessByTalkForm), { pulse: null });
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { phase, effort, pulse: pulseBpm } = read.value;
		if (!guidance.phases.some(({ kind }) => kind === phase)) {
			error(404, { code: 'not-found', message: 'not-found' });
		}
		const guess = { on: today, phase, effort, pulseBpm };
		await guesses.make(house.database, house.vault, runner.runnerId, guess, now);
		redirect(303, HERE);
	},
	look: async (event) => {
		const { house, runner, now, showsPulse } = await opened(event);
		const form = await event.request.formData();
		const read = showsPulse
			? readForm(form, lookForm)
			: withoutPulse(readForm(form, lookByTalkForm), { beats: null, method: null });
		if (!read.ok) return fail(400, { issues: read.issues, values: read.values });
		const { talk, beats, method } = read.value;
		const pulse = beats === null ? null : pulseOf(beats, method);
		if (pulse !== null && !withinPlausible('pulseBpm', pulse.pulseBpm)) {
			const isLow = pulse.pulseBpm < limits.pulseBpm.plausible.low;
			const issues = [{ field: 'beats', code: isLow ? 'too-low' : 'too-high' }];
			return fail(400, { issues, values: { talk, method: String(method), beats: String(beats) } });
		}
		const seen = { talk, ...(pulse ?? { pulseBpm: null, method: null }) };
		await guesses.look(house.database, house.vault, runner.runnerId, seen, now);
		redirect(303, HERE);
	},
	/** Whoever was interrupted begins again. */
	drop: async (event) => {
		const { house, runner } = await opened(event);
		await guesses.discardOpen(house.database, runner.runnerId);
		redirect(303, HERE);
	},
	remove: async (event) => {
		const { house, runner } = await opened(event);
		const id = (await event.request.formData()).get('id');
		if (typeof id !== 'string') error(400, { code: 'bad-request', message: 'bad-request' });
		await guesses.remove(house.database, runner.runnerId, id);
		redirect(303, HERE);
	},
	removeAll: async (event) => {
		const { house, runner } = await opened(event);
		await guesses.removeAll(house.database, runner.runnerId);
		redirect(303, HERE);
	}
};

/** What was read where no pulse is asked for, in the shape of what is. */
function withoutPulse<Value, None>(read: FormAnswer<Value>, none: None): FormAnswer<Value & None> {
	return read.ok ? { ok: true, value: { ...read.value, ...none } } : read;
}

function pulseOf(beats: number, method: '15' | '10' | 'device') {
	if (method === 'device') return { pulseBpm: beats, method } as const;
	const seconds = method === '15' ? 15 : 10;
	return { pulseBpm: pulseFromCount(beats, seconds), method: seconds } as const;
}
