import { encode } from 'uqr';

/** Light modules around the code, so that a camera finds it (ISO/IEC 18004, 9.1; M). */
const QUIET_ZONE = 4;

export interface QrCode {
	/** Modules on a side, the quiet ones among them. */
	readonly size: number;
	/** The dark modules as the outline of an SVG path, one unit each. */
	readonly path: string;
}

/** A QR code (ISO/IEC 18004) at level M, which bears a crease or a drop of rain. */
export function qrCode(text: string): QrCode {
	const { size, data } = encode(text, { ecc: 'M', border: QUIET_ZONE });
	const rows = data.flatMap((row, y) =>
		row.flatMap((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : []))
	);
	return { size, path: rows.join('') };
}
