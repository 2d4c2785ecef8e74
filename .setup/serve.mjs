// Serves the built app and stops so that nothing is cut off. Run by `npm start`, by the browser
// tests, or by a service manager: `node .setup/serve.mjs`. README says what the settings are.
import { existsSync } from 'node:fs';
import { createServer } from 'node:http';
import { answerWith } from './answering.mjs';
import { addressLine, listenProblem, readSettings, StartRefused } from './settings.mjs';

/** How long requests that are under way may take to end. */
const graceMilliseconds = 10_000;

const handlerFile = new URL(process.argv[2] ?? '../build/handler.js', import.meta.url);
const settings = unlessRefused(() => {
	if (!existsSync(handlerFile))
		throw new StartRefused('Nothing is built yet: npm start builds it.');
	return readSettings(process.env);
});
Object.assign(process.env, settings.env);

// We listen before the app is loaded: where the port is taken, another copy of it is perhaps using
// the same data, which this one then never touches. Requests wait for the app.
const app = Promise.withResolvers();
const server = createServer(answerWith(app.promise, settings));
server.on('request', (request, response) => response.on('close', releaseIdle));
server.on('error', (error) => refuse(listenProblem(error, settings)));
server.listen(settings.port, settings.host, load);

let isLoaded = false;
let isStopping = false;
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => stop(signal));
// Whoever started us with a channel wants us to end with them, even if they are killed.
process.on('disconnect', () => stop('SIGTERM'));

async function load() {
	const address = /** @type {import('node:net').AddressInfo} */ (server.address());
	// The app builds addresses of its own from it.
	process.env.PORT = String(address.port);
	try {
		const { handler } = await import(handlerFile.href);
		isLoaded = true;
		app.resolve(handler);
		console.log(addressLine(address.port, settings));
	} catch (error) {
		refuse(error);
	}
}

/**
 * Lets requests end, then the app close what it has open. A second signal changes nothing.
 * @param {string} reason
 */
function stop(reason) {
	if (isStopping) return;
	isStopping = true;
	if (!isLoaded) process.exit(0);
	/** @type {import('node:events').EventEmitter} */
	const events = process;
	// Answers that never end by themselves, such as a live page's events, end by this.
	events.emit('breathmark:stopping', reason);
	setTimeout(() => server.closeAllConnections(), graceMilliseconds).unref();
	server.close(() => {
		// The event of the framework's own server, so that the app need not know which one it is on.
		events.emit('sveltekit:shutdown', reason);
		if (process.connected) process.disconnect?.();
		setTimeout(() => process.exit(0), 2000).unref();
	});
	releaseIdle();
}

function releaseIdle() {
	if (isStopping) server.closeIdleConnections();
}

/**
 * @template Result
 * @param {() => Result} task
 */
function unlessRefused(task) {
	try {
		return task();
	} catch (error) {
		return refuse(error);
	}
}

/**
 * What whoever started us can mend is one line; the app has an error of the same name for what only
 * it can see.
 * @param {any} error
 * @returns {never}
 */
function refuse(error) {
	console.error(error?.name === 'StartRefused' ? error.message : error);
	process.exit(1);
}
