import type { PageServerLoad } from './$types';
import { numberFor } from '../number-for.ts';

export const load: PageServerLoad = async (event) => ({ emergencyNumber: await numberFor(event) });
