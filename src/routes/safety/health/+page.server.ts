import { visitor } from '$lib/server/visitor.ts';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ locals: { house, runner }, cookies }) => ({
	emergencyNumber: (await visitor(house, runner, cookies)).emergencyNumber
});
