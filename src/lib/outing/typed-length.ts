/**
 * A length of time as people type it, in seconds; null for what could mean two things. A number alone
 * is such: 6 may be minutes or seconds.
 *
 * @example typedLength('0:50') // 50
 * @example typedLength('1:30:00') // 5400
 * @example typedLength('90 s') // 90
 * @example typedLength('6 min') // 360
 * @example typedLength('6') // null
 */
export function typedLength(text: string): number | null {
	const typed = text.trim().toLowerCase();
	const clock = /^(?:(\d{1,2}):)?(\d{1,4}):([0-5]\d)$/.exec(typed);
	if (clock) {
		const [, hours = '0', minutes = '0', seconds = '0'] = clock;
		// With hours, minutes go up to 59.
		if (clock[1] !== undefined && Number(minutes) > 59) return null;
		return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds);
	}
	const worded = /^(\d{1,5})\s*(s|sec|min|′|″)$/.exec(typed);
	if (!worded) return null;
	const [, amount, unit] = worded;
	return Number(amount) * (unit === 'min' || unit === '′' ? 60 : 1);
}
