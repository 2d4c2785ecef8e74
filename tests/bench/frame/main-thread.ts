import type { CDPSession, Page } from '@playwright/test';

/** What a page's main thread did between one frame and the next, in milliseconds. */
export interface Frame {
	/** On the processor. */
	readonly workMs: number;
	/** Of that the longest that was done at a stretch. */
	readonly longestTaskMs: number;
	/** On the clock: with it what other programs took meanwhile. */
	readonly clockMs: number;
	/** True where a field got another value in it. */
	readonly tookInput: boolean;
}

interface TraceEvent {
	readonly name: string;
	readonly ph: string;
	readonly pid: number;
	readonly tid: number;
	/** Microseconds: when, how long on the clock, how long on the processor. */
	readonly ts: number;
	readonly dur?: number;
	readonly tdur?: number;
	readonly args?: { readonly name?: string; readonly data?: { readonly type?: string } };
}

const CATEGORIES = ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'];

/**
 * Traces a page while something is done on it, and answers every frame in which its main thread ran
 * scripts, styles, layout or paint.
 */
export async function framesDuring(page: Page, act: () => Promise<void>): Promise<Frame[]> {
	const client = await page.context().newCDPSession(page);
	const events: TraceEvent[] = [];
	client.on('Tracing.dataCollected', ({ value }) =>
		events.push(...(value as unknown as TraceEvent[]))
	);
	await client.send('Tracing.start', {
		transferMode: 'ReportEvents',
		traceConfig: { includedCategories: CATEGORIES, recordMode: 'recordAsMuchAsPossible' }
	});
	await act();
	await endTrace(client);
	await client.detach();
	return framesOf(events);
}

async function endTrace(client: CDPSession): Promise<void> {
	const ended = new Promise<void>((done) => client.once('Tracing.tracingComplete', () => done()));
	await client.send('Tracing.end');
	await ended;
}

function framesOf(events: readonly TraceEvent[]): Frame[] {
	const main = mainThreadOf(events);
	const own = events
		.filter(({ pid, tid }) => pid === main.pid && tid === main.tid)
		.sort((one, other) => one.ts - other.ts);
	// A frame ends where it is handed on to be shown.
	const ends = own
		.filter(({ name, ph }) => name === 'Commit' && ph === 'X')
		.map(({ ts, dur = 0 }) => ts + dur);
	const tasks = own.filter(({ name, ph }) => name === 'RunTask' && ph === 'X');
	const inputs = own.filter(
		({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'input'
	);
	const frames: Frame[] = [];
	let [next, nextInput] = [0, 0];
	for (const end of ends) {
		let [workMs, longestTaskMs, clockMs, tookInput] = [0, 0, 0, false];
		for (; next < tasks.length && tasks[next]!.ts < end; next++) {
			const { dur = 0, tdur = dur } = tasks[next]!;
			workMs += tdur / 1000;
			longestTaskMs = Math.max(longestTaskMs, tdur / 1000);
			clockMs += dur / 1000;
		}
		for (; nextInput < inputs.length && inputs[nextInput]!.ts < end; nextInput++) tookInput = true;
		frames.push({ workMs, longestTaskMs, clockMs, tookInput });
	}
	return frames;
}

/** That of the page, among the threads of its process and of others: the one that did most. */
function mainThreadOf(events: readonly TraceEvent[]): TraceEvent {
	const named = events.filter(
		({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain'
	);
	const workOf = ({ pid, tid }: TraceEvent) =>
		events.reduce(
			(sum, event) =>
				event.pid === pid && event.tid === tid && event.name === 'Commit' ? sum + 1 : sum,
			0
		);
	const [busiest] = named.sort((one, other) => workOf(other) - workOf(one));
	if (busiest === undefined) throw new Error('the trace names no main thread');
	return busiest;
}
