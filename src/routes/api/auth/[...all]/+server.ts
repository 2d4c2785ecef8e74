import type { RequestHandler } from './$types';

const answer: RequestHandler = ({ request, getClientAddress, locals }) =>
	locals.house.auth.handle(request, getClientAddress());

export const GET = answer;
export const POST = answer;
