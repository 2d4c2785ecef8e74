/*
 * The text of a file that some program wrote, whatever its encoding. A byte order mark says which
 * (Unicode Standard 16.0, 23.8); without one it is UTF-8 where that fits, for other text hardly ever
 * happens to be valid UTF-8, and else Windows-1252, which older spreadsheets write in western Europe.
 * The decoders are those of the WHATWG Encoding Standard. (M)
 */

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

export function decodeText(bytes: Uint8Array): { text: string; encoding: Encoding } {
	const encoding = encodingOf(bytes);
	// The decoder takes the byte order mark off.
	return { text: new TextDecoder(encoding).decode(bytes), encoding };
}

function encodingOf(bytes: Uint8Array): Encoding {
	const [first, second] = bytes;
	if (first === 0xff && second === 0xfe) return 'utf-16le';
	if (first === 0xfe && second === 0xff) return 'utf-16be';
	const zeros = [0, 0];
	bytes.forEach((byte, at) => {
		if (byte === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
	});
	// No text holds a zero, but in UTF-16 every space and line end has one in its upper half.
	const [even = 0, odd = 0] = zeros;
	if (even + odd > 0) return odd >= even ? 'utf-16le' : 'utf-16be';
	return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
}

function isUtf8(bytes: Uint8Array): boolean {
	try {
		new TextDecoder('utf-8', { fatal: true }).decode(bytes);
		return true;
	} catch {
		return false;
	}
}
