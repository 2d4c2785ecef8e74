import { heartRateMeasurement } from '$lib/recording/heart-rate-measurement.ts';
import type { Strap, StrapFault, StrapListener, Straps } from '$lib/recording/strap.ts';
import { bluetoothHere } from './bluetooth-here.ts';
import { BATTERY_SERVICE, connect, followBattery, PULSE_SERVICE } from './strap-connection.ts';

const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 30_000;
/** Some nine minutes with the longest wait between: whoever walks away for longer presses again. */
export const MOST_TRIES = 20;

/** How long to wait before a try: twice as long each time, up to half a minute. */
export function waitBeforeTry(tries: number): number {
	return Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** tries);
}

/**
 * A chest strap by the open Heart Rate service: chosen by the person, connected, and connected again
 * by itself when it drops out. It is let go of when stopped.
 */
export class HeartRateStrap implements Strap {
	#device: BluetoothDevice | null = null;
	/** Ends all that was begun for the wish before. */
	#wish = new AbortController();

	constructor(
		readonly bluetooth: Bluetooth,
		readonly listener: StrapListener
	) {}

	choose = async () => {
		const wish = this.#begin();
		this.listener.state({ kind: 'choosing' });
		try {
			const device = await this.bluetooth.requestDevice({
				filters: [{ services: [PULSE_SERVICE] }],
				optionalServices: [BATTERY_SERVICE]
			});
			if (wish.aborted) return;
			this.#device = device;
		} catch (error) {
			const isThere = await this.bluetooth.getAvailability().catch(() => false);
			this.#fail(isThere ? faultOf(error, 'nothing-chosen') : 'off', wish);
			return;
		}
		await this.again();
	};

	again = async () => {
		if (this.#device === null) return;
		const wish = this.#begin();
		this.listener.state({ kind: 'connecting' });
		try {
			await this.#connect(this.#device, wish);
		} catch (error) {
			this.#fail(faultOf(error, 'no-pulse'), wish);
		}
	};

	stop = () => {
		this.#begin();
		this.#device = null;
		this.listener.state({ kind: 'none' });
	};

	#begin(): AbortSignal {
		this.#wish.abort();
		this.#wish = new AbortController();
		return this.#wish.signal;
	}

	#fail(fault: StrapFault, wish: AbortSignal) {
		if (!wish.aborted) this.listener.state({ kind: 'failed', fault });
	}

	async #connect(device: BluetoothDevice, wish: AbortSignal) {
		const connection = new AbortController();
		const ended = connection.signal;
		const end = () => connection.abort();
		wish.addEventListener('abort', end, { once: true, signal: ended });
		try {
			const server = await connect(device, (bytes) => this.#hear(bytes), ended);
			const gone = () => {
				end();
				if (!wish.aborted) this.#tryLater(device, wish, 0);
			};
			device.addEventListener('gattserverdisconnected', gone, { once: true, signal: ended });
			this.listener.state({ kind: 'connected', batteryPercent: null });
			const tell = (batteryPercent: number) =>
				this.listener.state({ kind: 'connected', batteryPercent });
			void followBattery(server, tell, ended);
		} catch (error) {
			end();
			throw error;
		}
	}

	#hear(bytes: Uint8Array) {
		const said = heartRateMeasurement(bytes);
		if (said.kind === 'too-short') return;
		this.listener.reading({ atMs: performance.now(), bpm: said.bpm, contact: said.contact });
	}

	#tryLater(device: BluetoothDevice, wish: AbortSignal, tries: number) {
		if (tries >= MOST_TRIES) {
			this.listener.state({ kind: 'given-up' });
			return;
		}
		this.listener.state({ kind: 'away', tries });
		const next = setTimeout(() => {
			this.#connect(device, wish).catch(() => {
				if (!wish.aborted) this.#tryLater(device, wish, tries + 1);
			});
		}, waitBeforeTry(tries));
		wish.addEventListener('abort', () => clearTimeout(next), { once: true });
	}
}

/** What an error of the browser means; "not found" means something else at each step. */
function faultOf(error: unknown, notFound: StrapFault): StrapFault {
	switch (error instanceof DOMException ? error.name : '') {
		case 'NotFoundError':
			return notFound;
		case 'NotAllowedError':
		case 'SecurityError':
			return 'refused';
		default:
			return 'not-reached';
	}
}

/** The way to straps, for a page to hand to its parts. */
export const heartRateStraps: Straps = {
	here: bluetoothHere,
	open: (listener) => new HeartRateStrap(navigator.bluetooth, listener)
};
