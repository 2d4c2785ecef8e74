import type { Handle } from '@sveltejs/kit';

/**
 * No page of this app is kept by a cache, shown in a frame, or named to another site. Files with a
 * hash in their name do not come through here.
 */
export const neverKept: Handle = async ({ event, resolve }) => {
	const response = await resolve(event);
	response.headers.set('cache-control', 'no-store');
	response.headers.set('referrer-policy', 'same-origin');
	response.headers.set('x-content-type-options', 'nosniff');
	response.headers.set('x-frame-options', 'DENY');
	response.headers.set('permissions-policy', 'geolocation=(), camera=(), microphone=()');
	response.headers.set('cross-origin-opener-policy', 'same-origin');
	return response;
};
