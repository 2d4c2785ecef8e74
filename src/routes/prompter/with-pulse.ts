/* What measures a pulse, in one part: the page fetches it when somebody asks for a pulse. */
export { default as LivePulse } from '$lib/components/live-pulse/LivePulse.svelte';
export { heartRateStraps as straps } from '$lib/device/heart-rate-strap.ts';
