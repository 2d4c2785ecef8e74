// Loaded before the server: its clock runs ahead by CLOCK_AHEAD_MS, so that a test need not wait a
// year. Dates made from a given moment stay as they are.
const ahead = Number(process.env.CLOCK_AHEAD_MS ?? 0);

if (ahead !== 0) {
	const RealDate = Date;
	globalThis.Date = class extends RealDate {
		constructor(...given) {
			super(...(given.length === 0 ? [RealDate.now() + ahead] : given));
		}

		static now() {
			return RealDate.now() + ahead;
		}
	};
}
