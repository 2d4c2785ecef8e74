import { forgetInTab, keepInTab, keptInTab } from '$lib/device/tab-draft.ts';
import { walkMoment, type WalkMoment } from '$lib/guidance/walk-moment.ts';
import {
	afterWalk,
	walkingPulse,
	walkingSpeed,
	type AfterWalk,
	type PulseRead,
	type SpeedUnit
} from '$lib/guidance/typed-walk.ts';

const NAME = 'walk-check';
export const WALKS = 3;

/** The fields of the form, as they are typed. */
export type TypedWalks = Readonly<Record<string, string>>;

interface Kept {
	readonly typed: TypedWalks;
	/** 0 while warming up, then the walk, from 1; null without the clock. */
	readonly at: number | null;
	readonly startedAt: number | null;
}

/**
 * A walk check on its way: which walk, since when, and what was typed. All of it is kept in the tab,
 * and where a walk is comes from the clock alone, so that a reload or a phone that slept changes nothing.
 */
export class Guided {
	typed: TypedWalks = $state.raw({ read: 'minute' });
	at: number | null = $state(null);
	startedAt: number | null = $state(null);
	/** The clock, as it was looked at last. */
	now = $state(0);
	/** What is wrong with a field of this step. */
	wrong: { readonly field: string; readonly code: string } | null = $state.raw(null);
	ended: Exclude<AfterWalk, 'go-on'> | null = $state(null);

	constructor(
		private readonly owner: string,
		private readonly unit: SpeedUnit,
		private readonly limitBpm: number | null
	) {}

	get moment(): WalkMoment | null {
		return this.startedAt === null ? null : walkMoment(this.startedAt, this.now);
	}

	get read(): PulseRead {
		return this.typed['read'] === 'count-15' ? 'count-15' : 'minute';
	}

	/** @returns whether anything had been kept */
	restore(now: number): boolean {
		const kept = keptInTab(NAME, this.owner, now) as Partial<Kept> | null;
		if (!kept) return false;
		this.typed = { ...this.typed, ...kept.typed };
		this.at = kept.at ?? null;
		this.startedAt = kept.startedAt ?? null;
		this.now = now;
		return true;
	}

	forget(): void {
		forgetInTab(NAME);
		this.typed = { read: 'minute' };
		this.at = this.startedAt = this.ended = this.wrong = null;
	}

	type(field: string, text: string): void {
		this.typed = { ...this.typed, [field]: text };
		if (this.wrong?.field === field) this.wrong = null;
		this.#keep();
	}

	/** To a walk, or to the warm-up, with its clock at rest. */
	goTo(at: number): void {
		this.at = at;
		this.startedAt = this.wrong = null;
		this.#keep();
	}

	/** Whether a field of the form stands on the page in this step. */
	shows(field: string): boolean {
		if (this.at === 0) return field === 'read';
		return field === `${this.moment === null ? 'speed' : 'pulse'}${this.at}`;
	}

	/**
	 * What Enter and the button of each step do.
	 * @returns true where all three walks are done and can be sent
	 */
	press(): boolean {
		if (this.at === 0) this.goTo(1);
		else if (this.moment === null) this.#start();
		else return this.#finish();
		return false;
	}

	#start(): void {
		const field = `speed${this.at}`;
		const speed = this.#speedOf(this.at ?? 0);
		const before = this.#speedOf((this.at ?? 0) - 1);
		const code = typeof speed === 'string' ? speed : null;
		const isFaster = typeof before === 'string' || typeof speed === 'string' || speed > before;
		this.wrong = code ? { field, code } : isFaster ? null : { field, code: 'not-faster' };
		if (this.wrong) return;
		this.startedAt = this.now = Date.now();
		this.#keep();
	}

	#finish(): boolean {
		const at = this.at ?? 0;
		const field = `pulse${at}`;
		const text = (this.typed[field] ?? '').trim();
		const pulse = /^\d{1,3}$/.test(text) ? walkingPulse(Number(text), this.read) : null;
		if (!pulse?.ok) {
			this.wrong = { field, code: pulse?.code ?? (text === '' ? 'missing' : 'not-whole') };
			return false;
		}
		const talk = this.typed[`talk${at}`];
		if (talk === undefined) {
			this.wrong = { field: `talk${at}`, code: 'not-said' };
			return false;
		}
		if (at === WALKS) return true;
		const next = afterWalk(talk === 'yes', pulse.bpm, this.limitBpm);
		if (next === 'go-on') this.goTo(at + 1);
		else {
			this.forget();
			this.ended = next;
		}
		return false;
	}

	/** @returns metres a minute, or why not */
	#speedOf(nth: number): number | string {
		const text = (this.typed[`speed${nth}`] ?? '').trim();
		if (text === '') return 'missing';
		if (!/^\d{1,2}([.,]\d{1,3})?$/.test(text)) return 'not-a-number';
		return walkingSpeed(Number(text.replace(',', '.')), this.unit) ?? 'too-high';
	}

	#keep(): void {
		const kept: Kept = { typed: this.typed, at: this.at, startedAt: this.startedAt };
		keepInTab(NAME, this.owner, kept, Date.now());
	}
}
