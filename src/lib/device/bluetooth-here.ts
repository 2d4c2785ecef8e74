import type { BluetoothHere } from '$lib/recording/strap.ts';

/** Whether this browser, on this page, can speak to a strap. Asks nobody anything. */
export async function bluetoothHere(): Promise<BluetoothHere> {
	// On a page that is not secure no browser has it: the person can mend the address, not the browser.
	if (!window.isSecureContext) return 'not-secure';
	if (!('bluetooth' in navigator)) return 'not-in-this-browser';
	try {
		return (await navigator.bluetooth.getAvailability()) ? 'here' : 'off';
	} catch {
		return 'not-in-this-browser';
	}
}
