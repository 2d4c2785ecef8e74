import { error, fail, redirect } from '@sveltejs/kit';
import { guessByTalkForm, guessForm, lookByTalkForm, lookForm } from '$lib/forms/learn.ts';
import { readForm, type FormAnswer } from '$lib/forms/read-form.ts';
import { gettingCloser } from '$lib/guidance/guess.ts';
import { limits, withinPlausible } from '$lib/physiology/limits.ts';
import { pulseFromCount } from '$lib/physiology/pulse-count.ts';
import { roundHalfUp } from '$lib/physiology/units.ts';
import * as guesses from '$lib/server/guesses.ts';
import * as pastOutings from '$lib/server/past-outings.ts';
import { faultText } from '$words/faults.ts';
import { notFound } from '../../not-found.ts';
import { needGuidance } from '../need-guidance.ts';
import type { Actions, PageServerLoad } from './$types';
import { guessView, type Guess } from './guess-view.ts';
import { outingGuesses } from './outing-guesses.ts';

/** Older ones say little about today. Our own choices, no source. */
const OUTINGS = 20;
const SHOWN = 60;
const HERE = '/learn/guess';

async function opened(event: Parameters<typeof needGuidance>[0]) {
	const asked = await needGuidance(event);
	return { ...asked, showsPulse: asked.guidance.pulse.kind !== 'off' };
}

export const load: PageServerLoad = async (event) => {
	const { house, runner, now, guidance, showsPulse } = await opened(event);
	const { database, vault } = house;
	const open = await guesses.open(database, vault, runner.runnerId, now);
	const { runnerId } = runner;
	const here: readonly Guess[] = await guesses.list(database, vault, runnerId);
	const inOutings = outingGuesses(await pastOutings.newest(database, vault, runnerId, OUTINGS));
	const looked = [...here, ...inOutings]
		.sort((one, other) => other.guessedAt - one.guessedAt)
		.flatMap((guess) => guessView(guess, showsPulse) ?? [])
		.slice(0, SHOWN);
	const oldestFirst = looked.toReversed();
	const off = {
		beats: oldestFirst.flatMap(({ pulse }) => (pulse === null ? [] : [pulse.off])),
		steps: oldestFirst.map(({ effortOff }) => effortOff)
	};
	return {
		showsPulse,
		phases: guidance.phases.map(({ kind }) => kind),
		open: open && {
			phase: open.phase,
			effort: open.effort,
			pulseBpm: showsPulse ? open.pulseBpm : null
		},
		looked,
		/** A drawing each; without a pulse there is none of beats. */
		charts: (showsPulse ? (['beats', 'steps'] as const) : (['steps'] as const)).map((unit) => ({
			unit,
			off: off[unit],
			closer: rounded(gettingCloser(off[unit]), unit === 'beats' ? 0 : 1)
		}))
	};
};

const rounded = (closer: ReturnType<typeof gettingCloser>, digits: number) =>
	closer && {
		first: roundHalfUp(closer.first, digits),
		last: roundHalfUp(closer.last, digits)
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
			notFound();
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
		if (typeof id !== 'string')
			error(400, { code: 'bad-request', message: faultText('bad-request') });
		if ((await guesses.remove(house.database, runner.runnerId, id)) === 'not-found') notFound();
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
