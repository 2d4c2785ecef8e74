// Stands between Node's server and the app: what the app can only know from here, and an answer
// where the app gives none.

const unlessTheAppSays = {
	'cache-control': 'no-store',
	'referrer-policy': 'same-origin',
	'x-content-type-options': 'nosniff',
	'x-frame-options': 'DENY'
};

/**
 * @param {Promise<Function>} app settles when the app is loaded
 * @param {import('./settings.mjs').Settings} settings
 * @returns {import('node:http').RequestListener}
 */
export function answerWith(app, { isDirect }) {
	return async (request, response) => {
		if (isDirect)
			request.headers['x-forwarded-proto'] = protocolOf(request.headers['x-forwarded-proto']);
		// The framework sends redirects and refusals past the app's own headers.
		for (const [name, value] of Object.entries(unlessTheAppSays)) response.setHeader(name, value);
		try {
			const handle = await app;
			await handle(request, response, () => answer(response, 404, 'There is no such page.'));
		} catch (error) {
			// Nothing of the request is logged: it may hold what a person told us in confidence.
			console.error(error);
			answer(response, 500, 'Something went wrong here. Please try again.');
		}
	};
}

/**
 * A tunnel that was put in front says https; without one it is plain http.
 * @param {unknown} forwarded
 */
function protocolOf(forwarded) {
	return /^\s*https\s*(,|$)/.test(String(forwarded)) ? 'https' : 'http';
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} status
 * @param {string} line
 */
function answer(response, status, line) {
	if (response.headersSent) return response.destroy();
	const page = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Breathmark</title><p>${line}</p></html>`;
	response.writeHead(status, { 'content-type': 'text/html; charset=utf-8' }).end(page);
}
