/** Names of the Bluetooth standard: services 0x180D and 0x180F, values 0x2A37 and 0x2A19. */
export const PULSE_SERVICE = 'heart_rate';
export const BATTERY_SERVICE = 'battery_service';
const PULSE = 'heart_rate_measurement';
const BATTERY = 'battery_level';

/** A strap that is out of reach can leave a browser waiting for ever. Our own choice, no source. */
export const CONNECT_WITHIN_MS = 20_000;

const CHANGED = 'characteristicvaluechanged';

/**
 * Connects, and asks to be told of every beat message, until the connection ends.
 * @throws whatever the browser says: nothing is left connected then
 */
export async function connect(
	device: BluetoothDevice,
	heard: (bytes: Uint8Array) => void,
	ended: AbortSignal
): Promise<BluetoothRemoteGATTServer> {
	const { gatt } = device;
	if (!gatt) throw new DOMException('a device without values to read', 'NotFoundError');
	const late = setTimeout(() => gatt.disconnect(), CONNECT_WITHIN_MS);
	const close = () => gatt.disconnect();
	ended.addEventListener('abort', close, { once: true });
	try {
		const server = await gatt.connect();
		const service = await server.getPrimaryService(PULSE_SERVICE);
		const pulse = await service.getCharacteristic(PULSE);
		pulse.addEventListener(CHANGED, () => heard(bytesOf(pulse.value)), { signal: ended });
		await pulse.startNotifications();
		if (ended.aborted || !server.connected) {
			throw new DOMException('gone before anybody listened', 'AbortError');
		}
		return server;
	} catch (error) {
		gatt.disconnect();
		throw error;
	} finally {
		clearTimeout(late);
	}
}

/** Tells the battery's state, now and when it changes. Many straps have none to tell. */
export async function followBattery(
	server: BluetoothRemoteGATTServer,
	heard: (percent: number) => void,
	ended: AbortSignal
): Promise<void> {
	try {
		const service = await server.getPrimaryService(BATTERY_SERVICE);
		const battery = await service.getCharacteristic(BATTERY);
		const tell = () => {
			const [percent] = bytesOf(battery.value);
			if (!ended.aborted && percent !== undefined && percent <= 100) heard(percent);
		};
		battery.addEventListener(CHANGED, tell, { signal: ended });
		await battery.readValue();
		tell();
		if (battery.properties.notify) await battery.startNotifications();
	} catch {
		// A strap is as good without it.
	}
}

const bytesOf = (value: DataView | undefined) =>
	value === undefined
		? new Uint8Array()
		: new Uint8Array(value.buffer, value.byteOffset, value.byteLength);
