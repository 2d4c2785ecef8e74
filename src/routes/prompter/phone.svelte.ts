import { askKept } from '$lib/device/ask-kept.ts';
import { keep, last, noteTime, shut, stateOf } from '$lib/device/kept-here.ts';
import { forgetNotWell } from '$lib/device/not-well.ts';
import { waitMs } from '$lib/device/outbox.ts';
import { openPhone, type KeptHere, type PhoneDatabase } from '$lib/device/phone-database.ts';
import { sendAll } from '$lib/device/post-entries.ts';
import {
	forgetOld,
	signWaits,
	unsent,
	write,
	writeJotted,
	type Unsent
} from '$lib/device/written-entries.ts';
import type { Entry } from '$lib/outing/entry.ts';
import type { GrantState, KeptForRunner } from '$lib/outing/kept.ts';
import type { PhaseView } from '../bands/view.ts';

export type Kept = KeptForRunner<PhaseView>;
/** Whether numbers may be shown here now, and why not. */
export type PhoneAccess = GrantState | 'closed' | 'by-sign' | 'no-network';

const DAY_MS = 24 * 60 * 60 * 1000;
/** So long a last outing stays here after it was sent: the next morning is asked about it. */
const NEEDED_MS = 3 * DAY_MS;
const SEND_BEFORE_ASKING_MS = 4000;
const TELLS = 'breathmark-entries';

/** What this phone keeps: what may be shown and until when, and what was written down and not sent. */
export class Phone {
	here: KeptHere | null = $state.raw(null);
	access: PhoneAccess = $state('closed');
	unsent: Unsent = $state.raw({ waiting: 0, refused: 0 });
	/** True once something could not be written here. */
	isFull = $state(false);

	#reached = false;
	#failures = 0;
	#again: ReturnType<typeof setTimeout> | undefined;
	#sending: Promise<void> | null = null;
	#isMore = false;
	#isAsking = false;
	#others = new BroadcastChannel(TELLS);

	private constructor(readonly database: PhoneDatabase) {
		addEventListener('online', this.#online);
	}

	/** @throws where the browser keeps nothing */
	static async open(): Promise<Phone> {
		const phone = new Phone(await openPhone());
		await writeJotted(phone.database);
		phone.here = await last(phone.database);
		await forgetOld(phone.database, Date.now() - NEEDED_MS);
		await forgetNotWell(phone.database, Date.now());
		await phone.refresh();
		return phone;
	}

	get kept(): Kept | null {
		return this.access === 'open' ? (this.here?.kept as Kept | null) : null;
	}

	get runnerKey(): string | null {
		return this.here?.runnerKey ?? null;
	}

	/** Looks at the clock again. */
	check = () => {
		if (this.here?.bySign) this.access = 'by-sign';
		else if (this.here === null && !this.#reached) this.access = 'no-network';
		else this.access = stateOf(this.here, Date.now());
	};

	async noteTime() {
		if (this.runnerKey === null || this.#isAsking) return;
		const nowMs = Date.now();
		this.here = await noteTime(this.database, this.runnerKey, nowMs);
		// The server knows what a clock that was set back does not: ask it before anything closes.
		const wasSetBack = stateOf(this.here, nowMs) === 'clock-set-back';
		if (wasSetBack && this.access === 'open') {
			this.#isAsking = true;
			await this.refresh().finally(() => (this.#isAsking = false));
		}
		this.check();
	}

	/** Sends what waits, and asks what may be kept. A sign that has not arrived keeps everything shut. */
	refresh = async () => {
		await Promise.race([
			this.send(),
			new Promise((done) => setTimeout(done, SEND_BEFORE_ASKING_MS))
		]);
		const isSigned = async (key: string | null) => key && (await signWaits(this.database, key));
		const asked = (await isSigned(this.runnerKey)) ? null : await askKept();
		if (asked && asked.kind !== 'not-reached') this.#reached = true;
		if (asked?.kind === 'open') {
			const mayKeep = !(await isSigned(asked.kept.runnerKey));
			const here = await keep(this.database, asked.kept, Date.now());
			this.here = mayKeep ? here : await shut(this.database, here, true);
		} else if (asked?.kind === 'closed' && this.here !== null && this.here.kept !== null) {
			this.here = await shut(this.database, this.here, false);
		}
		this.check();
	};

	async shutBySign() {
		if (this.here !== null) this.here = await shut(this.database, this.here, true);
		this.check();
	}

	/** Writes at once what was done, and sends it when that is possible. */
	async write(runnerKey: string, entries: readonly Entry[]) {
		try {
			await write(this.database, runnerKey, entries);
		} catch {
			this.isFull = true;
		}
		this.unsent = await unsent(this.database);
		this.#others.postMessage('written');
		await this.send();
	}

	/** Tells when another page of this phone wrote something down. */
	onWritten(told: () => void) {
		this.#others.onmessage = told;
	}

	send(): Promise<void> {
		this.#isMore = this.#sending !== null;
		this.#sending ??= this.#sendNow().finally(() => (this.#sending = null));
		return this.#sending;
	}

	close() {
		removeEventListener('online', this.#online);
		clearTimeout(this.#again);
		this.#others.close();
		this.database.close();
	}

	#online = () => void this.refresh();

	async #sendNow() {
		clearTimeout(this.#again);
		let waiting: number;
		do {
			this.#isMore = false;
			waiting = await sendAll(this.database);
		} while (this.#isMore && waiting === 0);
		this.unsent = await unsent(this.database);
		this.#failures = waiting === 0 ? 0 : this.#failures + 1;
		if (waiting > 0) this.#again = setTimeout(() => void this.send(), waitMs(this.#failures));
	}
}
