import type { BrowserContext, CDPSession, Page } from '@playwright/test';

const uuid = (short: number) =>
	`0000${short.toString(16).padStart(4, '0')}-0000-1000-8000-00805f9b34fb`;

const PULSE_SERVICE = uuid(0x180d);
const PULSE = uuid(0x2a37);
const BATTERY_SERVICE = uuid(0x180f);
const BATTERY = uuid(0x2a19);
const NOTIFICATIONS = uuid(0x2902);

/** What Chromium answers a request of its emulated radio with. */
const DONE = 0;
const FAILED = 1;

interface Options {
	/** Whoever is asked closes the list again. */
	readonly cancels?: boolean;
	readonly batteryPercent?: number;
	/** It can be chosen, and has no pulse to read. */
	readonly isMute?: boolean;
}

/** The value that was subscribed to, as the page holds it. */
interface Subscribed {
	readonly subscribed?: { readValue(): Promise<unknown> };
}

/**
 * A heart-rate strap that Chromium emulates: choosing, connecting, subscribing, dropping out and
 * coming back are those of the browser. Only a beat is not: the emulator cannot send one by itself,
 * so it is read, which raises the same event with the same bytes.
 */
export class EmulatedStrap {
	readonly #address = '09:09:09:09:09:09';
	readonly #answered = new Set<string>();
	readonly #beats: (readonly number[])[] = [];
	#batteryId = '';
	#isBuilt = false;
	#isInReach = true;

	private constructor(
		readonly page: Page,
		readonly browser: CDPSession,
		readonly chooser: CDPSession,
		readonly options: Options
	) {}

	/** @param page before it is opened */
	static async attach(page: Page, context: BrowserContext, options: Options = {}) {
		const launched = context.browser();
		if (!launched) throw new Error('the strap needs a launched browser');
		const strap = new EmulatedStrap(
			page,
			await launched.newBrowserCDPSession(),
			await context.newCDPSession(page),
			options
		);
		await page.addInitScript(rememberSubscribed);
		await strap.#begin();
		return strap;
	}

	async #begin() {
		const { browser, chooser } = this;
		await browser.send('BluetoothEmulation.enable', { state: 'powered-on', leSupported: true });
		await browser.send('BluetoothEmulation.simulatePreconnectedPeripheral', {
			address: this.#address,
			name: 'Test strap',
			manufacturerData: [],
			knownServiceUuids: [PULSE_SERVICE]
		});
		browser.on('BluetoothEmulation.gattOperationReceived', ({ type }) => void this.#operate(type));
		browser.on(
			'BluetoothEmulation.characteristicOperationReceived',
			({ type, characteristicId }) => void this.#answer(type, characteristicId)
		);
		await chooser.send('DeviceAccess.enable');
		chooser.on('DeviceAccess.deviceRequestPrompted', ({ id, devices }) => {
			// The event repeats; a second answer ends the browser.
			if (this.#answered.has(id)) return;
			if (this.options.cancels) {
				this.#answered.add(id);
				void chooser.send('DeviceAccess.cancelPrompt', { id });
			} else if (devices.some((device) => device.id === this.#address)) {
				this.#answered.add(id);
				void chooser.send('DeviceAccess.selectPrompt', { id, deviceId: this.#address });
			}
		});
	}

	async #operate(type: 'connection' | 'discovery') {
		if (type === 'discovery' && !this.#isBuilt) {
			this.#isBuilt = true;
			await this.#build();
		}
		await this.browser.send('BluetoothEmulation.simulateGATTOperationResponse', {
			address: this.#address,
			type,
			code: type === 'connection' && !this.#isInReach ? FAILED : DONE
		});
	}

	async #build() {
		const { batteryPercent, isMute } = this.options;
		if (!isMute) await this.#add(PULSE_SERVICE, PULSE);
		if (batteryPercent !== undefined) this.#batteryId = await this.#add(BATTERY_SERVICE, BATTERY);
	}

	async #add(serviceUuid: string, characteristicUuid: string): Promise<string> {
		const { browser } = this;
		const { serviceId } = await browser.send('BluetoothEmulation.addService', {
			address: this.#address,
			serviceUuid
		});
		const { characteristicId } = await browser.send('BluetoothEmulation.addCharacteristic', {
			serviceId,
			characteristicUuid,
			properties: { notify: true, read: true }
		});
		await browser.send('BluetoothEmulation.addDescriptor', {
			characteristicId,
			descriptorUuid: NOTIFICATIONS
		});
		return characteristicId;
	}

	async #answer(
		type: 'read' | 'write' | 'subscribe-to-notifications' | 'unsubscribe-from-notifications',
		characteristicId: string
	) {
		const bytes =
			characteristicId === this.#batteryId
				? [this.options.batteryPercent ?? 0]
				: (this.#beats.shift() ?? [0, 0]);
		await this.browser.send('BluetoothEmulation.simulateCharacteristicOperationResponse', {
			characteristicId,
			type,
			code: DONE,
			...(type === 'read' ? { data: Buffer.from(bytes).toString('base64') } : {})
		});
	}

	/** One message with these bytes. */
	async send(...bytes: readonly number[]) {
		this.#beats.push(bytes);
		await this.page.evaluate(async () => {
			await (window as Subscribed).subscribed?.readValue();
		});
	}

	/** Some messages in contact, as fast as they go: enough for a steady pulse. */
	async beat(bpm: number, times = 3) {
		for (let n = 0; n < times; n++) await this.send(0x06, bpm);
	}

	/** The strap goes out of reach, for as long as it is not put back. */
	async drop({ comesBack = true } = {}) {
		this.#isInReach = comesBack;
		// With the connection Chromium forgets what could be read.
		this.#isBuilt = false;
		await this.browser.send('BluetoothEmulation.simulateGATTDisconnection', {
			address: this.#address
		});
	}

	comeBack() {
		this.#isInReach = true;
	}

	async radio(state: 'powered-on' | 'powered-off' | 'absent') {
		await this.browser.send('BluetoothEmulation.setSimulatedCentralState', { state });
	}

	/** On the session that began it, or the next one cannot begin. */
	async detach() {
		await this.browser.send('BluetoothEmulation.disable');
		await this.browser.detach();
	}
}

/** Runs in the page. */
function rememberSubscribed() {
	const kind = (window as { BluetoothRemoteGATTCharacteristic?: { prototype: Start } })
		.BluetoothRemoteGATTCharacteristic;
	interface Start {
		service?: { uuid: string };
		startNotifications(): Promise<unknown>;
	}
	if (!kind) return;
	const start = kind.prototype.startNotifications;
	kind.prototype.startNotifications = function () {
		if (this.service?.uuid.includes('180d')) Object.assign(window, { subscribed: this });
		return start.call(this);
	};
}
