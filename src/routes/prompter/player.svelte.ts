import { clockReading } from '$lib/device/clock-reading.ts';
import { keepClock, keptClock } from '$lib/device/run-clock.ts';
import { keepScreenOn } from '$lib/device/wake-lock.ts';
import { ofLastRun } from '$lib/device/written-entries.ts';
import { clockOfEntries } from '$lib/outing/clock-of-entries.ts';
import { dueEntries, type DueEntry } from '$lib/outing/due-entries.ts';
import type { Entry, EntryContent, MeasuredPulse } from '$lib/outing/entry.ts';
import { logOfEntries } from '$lib/outing/log-of-entries.ts';
import { mergeEntries } from '$lib/outing/merge-entries.ts';
import { clockToKeep, startClock, tellTime, type OutingClock } from '$lib/outing/outing-clock.ts';
import { phasesOf } from '$lib/outing/outing.ts';
import { talkMomentAt, type TalkMoment } from '$lib/outing/talk-moment.ts';
import { cuesSince, positionAt } from '$lib/outing/timeline.ts';
import { CueGiver, type CueChoice } from './cues.ts';
import { OutingTrack } from './outing-track.ts';
import { FRESH_MS, KEEP_EVERY_MS, LOOK_EVERY_MS, REFRESH_EVERY_MS } from './paces.ts';
import type { Phone } from './phone.svelte.ts';
import { PhasePulse } from './phase-pulse.ts';
import { secondsInto, type Answered } from './talk-answer.ts';

export type Started = Extract<Entry, { kind: 'started' }>;
type StartedContent = Extract<EntryContent, { kind: 'started' }>;

/** An outing that is on. All that it knows is in its entries, so a reload changes nothing. */
export class Player {
	entries: readonly Entry[] = $state.raw([]);
	nowMs = $state(0);
	/** Counts the cues that begin a phase, for the flash. */
	begun = $state(0);
	/** What a strap or a thumb measures now, for whoever asked for it. */
	pulse: MeasuredPulse | null = null;
	#phasePulse = new PhasePulse();
	readonly started: StartedContent;
	log = $derived.by(() => logOfEntries(this.entries));
	position = $derived.by(() => positionAt(phasesOf(this.started.outing), this.log, this.nowMs));
	talk = $derived.by(() => talkMomentAt(this.position));

	#clock: OutingClock;
	#lookedMs: number | null = null;
	#known = '';
	#keptMs = 0;
	#refreshedMs = 0;
	#cues: CueGiver;
	#timer: ReturnType<typeof setInterval>;
	#letSleep = keepScreenOn();
	#track: OutingTrack | null = null;

	private constructor(
		readonly phone: Phone,
		readonly runnerKey: string,
		readonly outingRunId: string,
		started: StartedContent,
		clock: OutingClock,
		readonly choice: CueChoice
	) {
		this.started = started;
		this.#clock = clock;
		this.#cues = new CueGiver(choice);
		this.#timer = setInterval(this.look, LOOK_EVERY_MS);
		document.addEventListener('visibilitychange', this.#returned);
		phone.onWritten(() => void this.#readAgain());
	}

	/** From a tap, so that sound is allowed. */
	static begin(
		phone: Phone,
		runnerKey: string,
		started: StartedContent,
		choice: CueChoice
	): Player {
		const run = crypto.randomUUID();
		const player = new Player(phone, runnerKey, run, started, startClock(clockReading()), choice);
		player.#sound();
		player.#write([{ ...started, elapsedMs: 0 }]);
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
		const started = entries.find((entry): entry is Started => entry.kind === 'started');
		if (!started) return null;
		const { outingRunId } = started;
		const clock = clockOfEntries(entries, await keptClock(phone.database, outingRunId));
		const player = new Player(phone, runnerKey, outingRunId, started, clock, choice);
		player.entries = entries;
		player.#lookedMs = tellTime(clock, clockReading()).elapsedMs;
		player.look();
		// Sound has to wait for the next tap.
		document.addEventListener('pointerdown', () => player.#sound(), { once: true });
		return player;
	}

	look = () => {
		const told = tellTime(this.#clock, clockReading());
		this.#clock = told.clock;
		this.nowMs = Math.max(told.elapsedMs, this.log.at(-1)?.atMs ?? 0);
		const planned = phasesOf(this.started.outing);
		for (const cue of cuesSince(planned, this.log, this.#lookedMs, this.nowMs)) {
			if (this.nowMs - cue.atMs > FRESH_MS) continue;
			this.#cues.give(cue, this.position.phases, this.#track?.isPlaying ?? false);
			if (cue.kind === 'phase-begins') this.begun += 1;
		}
		this.#lookedMs = this.nowMs;
		this.#track?.look(this.log, this.position, this.nowMs);
		this.#writeDue();
		if (this.nowMs - this.#keptMs >= KEEP_EVERY_MS) void this.#keep();
		if (this.nowMs - this.#refreshedMs < REFRESH_EVERY_MS) return;
		this.#refreshedMs = this.nowMs;
		void this.phone.refresh();
	};

	do(content: EntryContent) {
		this.look();
		this.#write([{ ...content, elapsedMs: this.nowMs }]);
		this.look();
	}

	/** Null as soon as there is none. Time that stands still is not measured. */
	measure(pulse: MeasuredPulse | null) {
		this.pulse = pulse;
		const isGoing = this.position.state === 'going';
		this.#phasePulse.hear(isGoing ? pulse : null, performance.now());
	}

	/** The same answer about the same moment, changed, counts in place of what was said before. */
	answer(moment: TalkMoment, answered: Answered) {
		const planned = phasesOf(this.started.outing);
		this.do({
			kind: 'talk-answer',
			phase: moment.phase,
			secondsIntoPhase: secondsInto(moment, this.position, planned),
			...answered,
			afterPassage: moment.said === 'passage',
			pulse: this.pulse
		});
	}

	/** Once it is over, or the page is left. */
	close() {
		clearInterval(this.#timer);
		document.removeEventListener('visibilitychange', this.#returned);
		this.#letSleep();
		this.#cues.close();
		this.#track?.close();
	}

	#sound() {
		this.#cues.open();
		if (!this.choice.sound || !this.choice.track) return;
		this.#track = new OutingTrack(this.started.outing, {
			play: () => this.do({ kind: 'resumed' }),
			pause: () => this.do({ kind: 'paused' })
		});
	}

	/** Only where a phase has ended or something was done: this is looked at four times a second. */
	#writeDue() {
		const place = this.position.state === 'over' ? 'over' : this.position.index;
		const known = `${place} ${this.entries.length}`;
		if (known === this.#known) return;
		this.#known = known;
		const due = dueEntries(this.started.outing, this.entries, this.nowMs);
		if (due.length > 0) this.#write(this.#phasePulse.withSummary(due, performance.now()));
	}

	#write(due: readonly DueEntry[]) {
		const next = Math.max(-1, ...this.entries.map(({ seq }) => seq)) + 1;
		const written = due.map((one, i): Entry => ({
			...one,
			id: crypto.randomUUID(),
			outingRunId: this.outingRunId,
			seq: next + i,
			// What happened while nobody looked gets the time when it happened.
			at: Math.max(0, Math.round(Date.now() - (this.nowMs - one.elapsedMs)))
		}));
		this.entries = [...this.entries, ...written];
		void this.phone.write(this.runnerKey, written);
	}

	async #keep() {
		this.#keptMs = this.nowMs;
		await keepClock(
			this.phone.database,
			this.outingRunId,
			clockToKeep(this.#clock, clockReading())
		);
		await this.phone.noteTime();
	}

	#returned = () => {
		this.look();
		if (document.visibilityState === 'visible') void this.phone.refresh();
	};

	/** Another page of this phone wrote something down, perhaps about this outing. */
	async #readAgain() {
		const written = await ofLastRun(this.phone.database, this.runnerKey);
		if (written[0]?.outingRunId === this.outingRunId) {
			this.entries = mergeEntries(this.entries, written);
		}
	}
}
