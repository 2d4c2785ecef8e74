export type LoadedPulse = Awaited<ReturnType<typeof loadPulse>>;

/** The live pulse and the straps of this device, fetched only when somebody asks for a pulse. */
export const loadPulse = () => import('./with-pulse.ts');
