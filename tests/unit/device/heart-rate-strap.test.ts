import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { HeartRateStrap, MOST_TRIES, waitBeforeTry } from '$lib/device/heart-rate-strap.ts';
import { CONNECT_WITHIN_MS } from '$lib/device/strap-connection.ts';
import type { PulseReading } from '$lib/recording/pulse-now.ts';
import type { StrapState } from '$lib/recording/strap.ts';
import { browserWith, FakeStrap } from './fake-bluetooth.ts';

/* Errors by name as in the Web Bluetooth standard; the rules of trying again are our own. */

const named = (name: string) => new DOMException('said by the browser', name);

function openWith(device: FakeStrap, bluetooth = browserWith(device)) {
	const states: StrapState[] = [];
	const readings: PulseReading[] = [];
	const strap = new HeartRateStrap(bluetooth, {
		state: (state) => states.push(state),
		reading: (reading) => readings.push(reading)
	});
	return { strap, states, readings, kinds: () => states.map(({ kind }) => kind) };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a chest strap', () => {
	it('is chosen, connected, and heard', async () => {
		const device = new FakeStrap();
		const { strap, readings, kinds } = openWith(device);
		await strap.choose();
		expect(kinds()).toEqual(['choosing', 'connecting', 'connected']);
		device.pulse.send(0x06, 133);
		device.pulse.send(0x01, 0x2c, 0x01);
		device.pulse.send(0x04, 0);
		expect(readings.map(({ bpm, contact }) => [bpm, contact])).toEqual([
			[133, 'held'],
			[300, 'not-told'],
			[null, 'lost']
		]);
	});

	it('is not disturbed by bytes that hold no pulse', async () => {
		const device = new FakeStrap();
		const { strap, readings, kinds } = openWith(device);
		await strap.choose();
		device.pulse.send();
		device.pulse.send(0x01, 0x40);
		expect(readings).toEqual([]);
		expect(kinds().at(-1)).toBe('connected');
	});

	it('tells its battery where it has one, and what changes', async () => {
		const device = new FakeStrap();
		device.batteryPercent = 15;
		const { strap, states } = openWith(device);
		await strap.choose();
		await vi.advanceTimersByTimeAsync(0);
		expect(states.at(-1)).toEqual({ kind: 'connected', batteryPercent: 15 });
		device.battery.send(14);
		expect(states.at(-1)).toEqual({ kind: 'connected', batteryPercent: 14 });
		device.battery.send(200);
		expect(states.at(-1)).toEqual({ kind: 'connected', batteryPercent: 14 });
	});

	it.each([
		['NotFoundError', true, 'nothing-chosen'],
		['NotFoundError', false, 'off'],
		['SecurityError', true, 'refused'],
		['NotAllowedError', true, 'refused'],
		['NetworkError', true, 'not-reached']
	] as const)('a choice that ends with %s (radio on: %s) is "%s"', async (name, isOn, fault) => {
		const device = new FakeStrap();
		const { strap, states } = openWith(device, browserWith(device, named(name), isOn));
		await strap.choose();
		expect(states.at(-1)).toEqual({ kind: 'failed', fault });
	});

	it('says when the thing that was chosen has no pulse, or cannot be reached', async () => {
		const mute = new FakeStrap();
		mute.hasPulse = false;
		const first = openWith(mute);
		await first.strap.choose();
		expect(first.states.at(-1)).toEqual({ kind: 'failed', fault: 'no-pulse' });
		expect(mute.gatt.connected).toBe(false);

		const far = new FakeStrap();
		far.faults = [named('NetworkError')];
		const second = openWith(far);
		await second.strap.choose();
		expect(second.states.at(-1)).toEqual({ kind: 'failed', fault: 'not-reached' });
		await second.strap.again();
		expect(second.states.at(-1)?.kind).toBe('connected');
	});

	it('does not wait for ever for one that is out of reach', async () => {
		const device = new FakeStrap();
		device.faults = ['never'];
		const { strap, states } = openWith(device);
		const choosing = strap.choose();
		await vi.advanceTimersByTimeAsync(CONNECT_WITHIN_MS);
		await choosing;
		expect(states.at(-1)).toEqual({ kind: 'failed', fault: 'not-reached' });
	});

	it('comes back by itself after a dropout, and is heard once', async () => {
		const device = new FakeStrap();
		const { strap, readings, kinds } = openWith(device);
		await strap.choose();
		device.faults = [named('NetworkError'), named('NetworkError')];
		device.drop();
		expect(kinds().at(-1)).toBe('away');
		await vi.advanceTimersByTimeAsync(1000 + 2000);
		expect(device.tries).toBe(3);
		expect(kinds().at(-1)).toBe('away');
		await vi.advanceTimersByTimeAsync(4000);
		expect(kinds().at(-1)).toBe('connected');
		device.pulse.send(0x06, 120);
		expect(readings).toHaveLength(1);
		device.drop();
		expect(kinds().at(-1)).toBe('away');
	});

	it('waits twice as long each time, up to half a minute, and gives up in the end', async () => {
		expect([0, 1, 2, 3, 4, 5, 6].map(waitBeforeTry)).toEqual([
			1000, 2000, 4000, 8000, 16_000, 30_000, 30_000
		]);
		const device = new FakeStrap();
		const { strap, kinds } = openWith(device);
		await strap.choose();
		device.faults = Array.from({ length: MOST_TRIES }, () => named('NetworkError'));
		device.drop();
		await vi.advanceTimersByTimeAsync(20 * 60_000);
		expect(device.tries).toBe(1 + MOST_TRIES);
		expect(kinds().at(-1)).toBe('given-up');
		await strap.again();
		expect(kinds().at(-1)).toBe('connected');
	});

	it('is let go of when stopped: connected, away, or on the way', async () => {
		const device = new FakeStrap();
		const { strap, kinds, readings } = openWith(device);
		await strap.choose();
		strap.stop();
		expect(device.gatt.connected).toBe(false);
		expect(kinds().at(-1)).toBe('none');
		device.pulse.send(0x06, 120);
		expect(readings).toEqual([]);

		await strap.choose();
		device.drop();
		strap.stop();
		await vi.advanceTimersByTimeAsync(60_000);
		expect(device.tries).toBe(2);

		device.faults = ['never'];
		const choosing = strap.choose();
		await vi.advanceTimersByTimeAsync(0);
		strap.stop();
		await choosing;
		expect(kinds().at(-1)).toBe('none');
		expect(device.gatt.connected).toBe(false);
	});
});
