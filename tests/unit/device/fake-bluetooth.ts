/**
 * A strap, as the Web Bluetooth standard lets a page see one: enough of it to connect, to send bytes,
 * to go away and to come back.
 */
export class FakeStrap extends EventTarget {
	readonly pulse = new FakeValue();
	readonly battery = new FakeValue();
	/** What the next tries to connect end with; null lets them through. */
	faults: (Error | 'never')[] = [];
	hasPulse = true;
	batteryPercent: number | null = null;
	tries = 0;
	#refuse: (error: Error) => void = () => {};
	readonly gatt = {
		connected: false,
		connect: () => this.#connect(),
		disconnect: () => this.drop(),
		getPrimaryService: async (name: string) => this.#service(name)
	};

	async #connect() {
		this.tries += 1;
		const fault = this.faults.shift();
		if (fault === 'never') {
			return new Promise<never>((_, refuse) => {
				this.#refuse = refuse;
			});
		}
		if (fault) throw fault;
		this.gatt.connected = true;
		return this.gatt;
	}

	async #service(name: string) {
		if (!this.gatt.connected) throw new DOMException('gone', 'NetworkError');
		const value = name === 'heart_rate' ? this.pulse : this.battery;
		const isThere = name === 'heart_rate' ? this.hasPulse : this.batteryPercent !== null;
		if (!isThere) throw new DOMException('none', 'NotFoundError');
		if (name !== 'heart_rate') value.next = [this.batteryPercent ?? 0];
		return { getCharacteristic: async () => value };
	}

	/** The connection ends, as at the edge of the radio's reach, or because the page asked for it. */
	drop() {
		this.#refuse(new DOMException('aborted', 'AbortError'));
		if (!this.gatt.connected) return;
		this.gatt.connected = false;
		this.dispatchEvent(new Event('gattserverdisconnected'));
	}
}

class FakeValue extends EventTarget {
	value: DataView | undefined;
	next: number[] = [];
	readonly properties = { notify: true };

	async startNotifications() {
		return this;
	}

	async readValue() {
		this.send(...this.next);
		return this.value;
	}

	send(...bytes: number[]) {
		// In the middle of a larger buffer, as browsers may hand it over.
		const { buffer } = new Uint8Array([0xff, ...bytes, 0xff]);
		this.value = new DataView(buffer, 1, bytes.length);
		this.dispatchEvent(new Event('characteristicvaluechanged'));
	}
}

/** A browser whose person picks that strap, or ends the choice with an error. */
export function browserWith(strap: FakeStrap, choice: Error | null = null, isOn = true): Bluetooth {
	const bluetooth = {
		getAvailability: async () => isOn,
		requestDevice: async () => {
			if (choice) throw choice;
			return strap;
		}
	};
	return bluetooth as unknown as Bluetooth;
}
