import { forgetInTab, keepInTab, keptInTab } from '$lib/device/tab-draft.ts';
import {
	mileMoment,
	mileSeconds,
	type MileMoment,
	type TimedMile
} from '$lib/guidance/mile-moment.ts';
import { minutesAndSeconds } from '$words/dates.ts';

const NAME = 'mile-walk';

interface Kept {
	readonly typed: Readonly<Record<string, string>>;
	readonly timed: TimedMile | null;
}

/** A mile on its way, and what was typed: kept in the tab, read from the clock alone. */
export class Mile {
	typed: Readonly<Record<string, string>> = $state.raw({});
	timed: TimedMile | null = $state.raw(null);
	/** The clock, as it was looked at last. */
	now = $state(0);

	constructor(private readonly owner: string) {}

	get moment(): MileMoment | null {
		return this.timed === null ? null : mileMoment(this.timed, this.now);
	}

	/** @returns whether anything had been kept */
	restore(now: number): boolean {
		const kept = keptInTab(NAME, this.owner, now) as Partial<Kept> | null;
		if (!kept) return false;
		this.typed = kept.typed ?? {};
		this.timed = kept.timed ?? null;
		this.now = now;
		return true;
	}

	forget(): void {
		forgetInTab(NAME);
		this.typed = {};
		this.timed = null;
	}

	type(field: string, text: string): void {
		this.typed = { ...this.typed, [field]: text };
		this.#keep();
	}

	start(): void {
		this.now = Date.now();
		this.timed = { startedAt: this.now, endedAt: null };
		this.#keep();
	}

	end(): void {
		if (this.timed === null) return;
		this.now = Date.now();
		const { startedAt } = this.timed;
		this.timed = { startedAt, endedAt: this.now };
		this.type('time', minutesAndSeconds(mileSeconds({ startedAt, endedAt: this.now })));
	}

	again(): void {
		this.timed = null;
		this.#keep();
	}

	#keep(): void {
		keepInTab(NAME, this.owner, { typed: this.typed, timed: this.timed }, Date.now());
	}
}
