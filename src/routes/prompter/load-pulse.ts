export type LoadedPulse = Awaited<ReturnType<typeof loadPulse>>;

/** The live pulse and the straps of this device, fetched only when somebody asks for a pulse. */
export async function loadPulse() {
	const [{ default: LivePulse }, { heartRateStraps }] = await Promise.all([
		import('$lib/components/live-pulse/LivePulse.svelte'),
		import('$lib/device/heart-rate-strap.ts')
	]);
	return { LivePulse, straps: heartRateStraps };
}
