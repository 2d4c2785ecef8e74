// What the environment says about serving, checked before anything is opened.

/** Why the server does not start, in one line, for whoever started it. */
export class StartRefused extends Error {
	/** @override */
	name = 'StartRefused';
}

/**
 * @typedef {object} Settings
 * @property {number} port 0: any that is free
 * @property {string} host
 * @property {string | undefined} origin the address that people see, where it is not our own
 * @property {boolean} isDirect whether we have to tell the app that people come over plain http
 * @property {Record<string, string>} env to be added to the environment before the app is loaded
 */

/**
 * @param {NodeJS.ProcessEnv} env
 * @returns {Settings}
 * @throws {StartRefused} where a setting cannot be used
 */
export function readSettings({ PORT, HOST, ORIGIN, PROTOCOL_HEADER }) {
	const port = Number(PORT || 4173);
	if (!Number.isInteger(port) || port < 0 || port > 65535) {
		throw new StartRefused(
			`PORT is "${PORT}", which is not a port: give a number from 1 to 65535.`
		);
	}
	if (ORIGIN && !isOrigin(ORIGIN)) {
		throw new StartRefused(
			`ORIGIN is "${ORIGIN}", which is not an address: give it like https://run.example.org.`
		);
	}
	// The framework's server takes every request for https unless it is told otherwise, and then
	// answers each form sent over http://localhost with 403, because it seems to come from elsewhere.
	const isDirect = !ORIGIN && !PROTOCOL_HEADER;
	return {
		port,
		host: HOST || '127.0.0.1',
		origin: ORIGIN || undefined,
		isDirect,
		env: isDirect ? { PROTOCOL_HEADER: 'x-forwarded-proto' } : {}
	};
}

/** @param {string} text */
function isOrigin(text) {
	const url = URL.canParse(text) ? new URL(text) : undefined;
	return url !== undefined && ['http:', 'https:'].includes(url.protocol) && url.pathname === '/';
}

/**
 * @param {NodeJS.ErrnoException} error
 * @param {Settings} settings
 */
export function listenProblem({ code, message }, { port, host }) {
	switch (code) {
		case 'EADDRINUSE':
			return new StartRefused(
				`Port ${port} is taken: stop what is using it, or choose another: PORT=4174 npm start.`
			);
		case 'EACCES':
			return new StartRefused(
				`Port ${port} is forbidden to you: choose one from 1024 on: PORT=4173 npm start.`
			);
		case 'EADDRNOTAVAIL':
		case 'ENOTFOUND':
		case 'EAI_AGAIN':
			return new StartRefused(`HOST is "${host}", which is no address of this machine.`);
		default:
			return new StartRefused(`The server cannot listen on ${host}, port ${port}: ${message}.`);
	}
}

/**
 * The one line that a start prints. Browsers keep some things for https and for localhost by that
 * name, so the name is what we give.
 * @param {number} port
 * @param {Settings} settings
 */
export function addressLine(port, { host, origin }) {
	if (origin) return `Breathmark is at ${origin} (listening on ${host}, port ${port})`;
	const everywhere = host === '0.0.0.0' || host === '::';
	const local = everywhere || ['127.0.0.1', '::1', 'localhost'].includes(host);
	const name = local ? 'localhost' : host.includes(':') ? `[${host}]` : host;
	return `Breathmark is at http://${name}:${port}${everywhere ? ', and open to other machines' : ''}`;
}
