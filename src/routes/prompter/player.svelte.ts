import { clockReading } from '$lib/device/clock-reading.ts';
import { keepScreenOn } from '$lib/device/wake-lock.ts';
import { ofLastRun } from '$lib/device/written-entries.ts';
import { dueEntries, type DueEntry } from '$lib/outing/due-entries.ts';
import type { Entry, EntryContent, MeasuredPulse } from '$lib/outing/entry.ts';
import { logOfEntries } from '$lib/outing/log-of-entries.ts';
import { mergeEntries } from '$lib/outing/merge-entries.ts';
import { startClock } from '$lib/outing/outing-clock.ts';
import { phasesOf, type OutingPhase } from '$lib/outing/outing.ts';
import { talkMomentAt, type TalkMoment } from '$lib/outing/talk-moment.ts';
import { endsAt, positionAt } from '$lib/outing/timeline.ts';
import type { Cue } from '$lib/outing/walked.ts';
import { Announcer } from './announcer.ts';
import type { CueChoice } from './cues.ts';
import { entriesOf } from './entries-of.ts';
import { LOOK_EVERY_MS, REFRESH_EVERY_MS } from './paces.ts';
import type { Phone } from './phone.svelte.ts';
import { PhasePulse } from './phase-pulse.ts';
import { RunningClock } from './running-clock.ts';
import { takenUp } from './taken-up.ts';
import { answerContent, type Answered } from './talk-answer.ts';

type StartedContent = Extract<EntryContent, { kind: 'started' }>;

/** An outing that is on. All that it knows is in its entries, so a reload changes nothing. */
export class Player {
	entries: readonly Entry[] = $state.raw([]);
	nowMs = $state(0);
	/** The last cue that was given, for the flash. */
	cue: Cue | null = $state.raw(null);
	/** What the phone's clock went on by itself, over the end of the outing: the runner is asked. */
	leapMs = $state(0);
	/** Whether tones, voice and vibration wait for a tap. */
	waitsForTap = $state(false);
	/** What a strap or a thumb measures now, for whoever asked for it. */
	pulse: MeasuredPulse | null = null;
	readonly started: StartedContent;
	readonly planned: readonly OutingPhase[];
	log = $derived.by(() => logOfEntries(this.entries));
	position = $derived.by(() => positionAt(this.planned, this.log, this.nowMs));
	talk = $derived.by(() => talkMomentAt(this.position));

	#known = '';
	#refreshedMs = 0;
	#announcer: Announcer;
	#timer: ReturnType<typeof setInterval>;
	#letSleep = keepScreenOn();

	private constructor(
		readonly phone: Phone,
		readonly runnerKey: string,
		started: StartedContent,
		readonly clock: RunningClock,
		readonly phasePulse: PhasePulse,
		readonly choice: CueChoice,
		lookedMs: number | null
	) {
		this.started = started;
		this.planned = phasesOf(started.outing);
		this.#announcer = new Announcer(started.outing, choice, lookedMs);
		this.#timer = setInterval(this.look, LOOK_EVERY_MS);
		document.addEventListener('visibilitychange', this.#returned);
		phone.onWritten(() => void this.#readAgain());
	}

	/** From a tap, so that sound is allowed. Opening it takes a while: the start is written first. */
	static begin(
		phone: Phone,
		runnerKey: string,
		started: StartedContent,
		choice: CueChoice
	): Player {
		const run = crypto.randomUUID();
		const clock = new RunningClock(phone.database, run, startClock(clockReading()));
		const pulse = new PhasePulse(null);
		const player = new Player(phone, runnerKey, started, clock, pulse, choice, null);
		player.#write([{ ...started, elapsedMs: 0 }]);
		player.#sound();
		player.look();
		return player;
	}

	/** One that a reload, a crash or a kill interrupted: it went on while nobody looked. */
	static async interrupted(
		phone: Phone,
		runnerKey: string,
		entries: readonly Entry[],
		choice: CueChoice
	): Promise<Player | null> {
		const taken = await takenUp(phone.database, entries);
		if (taken === null) return null;
		const { started, clock, pulse, lookedMs } = taken;
		const player = new Player(phone, runnerKey, started, clock, pulse, choice, lookedMs);
		player.entries = entries;
		player.look();
		// Any tap will do.
		document.addEventListener('click', player.soundAgain);
		return player;
	}

	look = () => {
		const tellsMs = this.clock.look(endsAt(this.position, this.nowMs));
		this.nowMs = Math.max(tellsMs, this.log.at(-1)?.atMs ?? 0);
		this.leapMs = this.clock.leapMs;
		this.cue = this.#announcer.look(this.log, this.position, this.nowMs).at(-1) ?? this.cue;
		this.waitsForTap = this.#announcer.waitsForTap;
		this.#writeDue();
		if (this.clock.isDue(this.nowMs)) void this.#keep();
		if (this.nowMs - this.#refreshedMs < REFRESH_EVERY_MS) return;
		this.#refreshedMs = this.nowMs;
		void this.phone.refresh();
	};

	do(content: EntryContent) {
		this.look();
		this.#write([{ ...content, elapsedMs: this.nowMs }]);
		this.look();
	}

	/** What the runner says of a leap of the clock. */
	settleLeap(what: 'went-on' | 'stopped' | 'clock-set') {
		this.clock.settleLeap(what === 'went-on');
		if (what === 'stopped') return this.do({ kind: 'ended', how: 'early' });
		this.look();
		void this.#keep();
	}

	/** Null as soon as there is none. Time that stands still is not measured. */
	measure(pulse: MeasuredPulse | null) {
		this.pulse = pulse;
		const isGoing = this.position.state === 'going';
		this.phasePulse.hear(isGoing ? pulse : null, performance.now());
	}

	/** The same answer about the same moment, changed, counts in place of what was said before. */
	answer(moment: TalkMoment, answered: Answered) {
		this.do(answerContent(moment, this, answered));
	}

	/** Once it is over, or the page is left. */
	close() {
		clearInterval(this.#timer);
		document.removeEventListener('visibilitychange', this.#returned);
		document.removeEventListener('click', this.soundAgain);
		this.#letSleep();
		this.#announcer.close();
	}

	/** From a tap. The look at the end lets the sound begin in it, and not at the next tick. */
	soundAgain = () => {
		if (!this.#announcer.waitsForTap) return;
		this.#sound();
		this.look();
	};

	#sound() {
		this.#announcer.open({
			// A key of a headset never undoes that something feels wrong.
			play: () => this.position.state === 'paused' && this.do({ kind: 'resumed' }),
			pause: () => this.position.state === 'going' && this.do({ kind: 'paused' })
		});
	}

	#writeDue() {
		if (this.phone.kept?.pulseOn !== true) this.phasePulse.forget();
		const over = this.phasePulse.look(this.planned, this.position, this.nowMs);
		// Only where a phase has ended or something was done: this is looked at four times a second.
		const place = this.position.state === 'over' ? 'over' : this.position.index;
		const known = `${place} ${this.entries.length}`;
		if (known === this.#known && over.length === 0) return;
		this.#known = known;
		const due = [...dueEntries(this.started.outing, this.entries, this.nowMs), ...over];
		if (due.length > 0) this.#write(due);
		if (over.length > 0) void this.#keep();
	}

	#write(due: readonly DueEntry[]) {
		const written = entriesOf(due, this.clock.outingRunId, this);
		this.entries = [...this.entries, ...written];
		void this.phone.write(this.runnerKey, written);
	}

	async #keep() {
		await this.clock.keep(this.nowMs, this.phasePulse.soFar);
		await this.phone.noteTime();
	}

	#returned = () => {
		this.look();
		if (document.visibilityState === 'visible') void this.phone.refresh();
	};

	/** Another page of this phone wrote something down, perhaps about this outing. */
	async #readAgain() {
		const written = await ofLastRun(this.phone.database, this.runnerKey);
		if (written[0]?.outingRunId === this.clock.outingRunId) {
			this.entries = mergeEntries(this.entries, written);
		}
	}
}
