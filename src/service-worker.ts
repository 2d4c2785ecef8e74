/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
import { forgetNotWellHere } from '$lib/device/not-well.ts';
import { build, version } from '$service-worker';

/**
 * Keeps what must work without a network: the urgent signs, the signs to stop, the prompter, and a
 * page that says that there is none. Nothing personal is kept: the pages are fetched without cookies,
 * and the prompter is empty until it reads what the gate let this phone keep.
 */
const worker = globalThis.self as unknown as ServiceWorkerGlobalScope;

const CACHE = `breathmark-${version}`;
const PAGES = [
	'/screening',
	'/safety',
	'/safety/weather',
	'/safety/outing',
	'/safety/health',
	'/prompter',
	'/offline'
];
/** Where the installed app opens. It is not kept, for it says where somebody stands. */
const START = '/';
/** A network that takes longer is as good as none, where something is kept. Our own choice. */
const PATIENCE_MS = 4000;
const ASSETS = new Set(build);

worker.addEventListener('install', (event) => {
	event.waitUntil(fill().then(() => worker.skipWaiting()));
});

worker.addEventListener('activate', (event) => {
	event.waitUntil(dropOld().then(() => worker.clients.claim()));
});

worker.addEventListener('fetch', (event) => {
	const { request } = event;
	const url = new URL(request.url);
	if (url.origin !== worker.location.origin) return;
	if (ASSETS.has(url.pathname)) event.respondWith(asset(request));
	else if (request.mode === 'navigate') {
		event.respondWith(page(request, url.pathname));
		// Whichever page of the app is opened, what was said of another day goes.
		event.waitUntil(forgetNotWellHere(Date.now()));
	}
});

async function fill() {
	const cache = await caches.open(CACHE);
	await cache.addAll(build);
	await Promise.all(
		PAGES.map(async (path) => {
			const answer = await fetch(path, { credentials: 'omit', cache: 'no-store' });
			// A page that leads elsewhere is not the one that was asked for.
			if (!answer.ok || answer.redirected) throw new Error(`${path} answered ${answer.status}`);
			await cache.put(path, answer);
		})
	);
}

async function dropOld() {
	const names = await caches.keys();
	await Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name)));
}

/** Files with a hash in their name never change. */
async function asset(request: Request): Promise<Response> {
	return (await caches.match(request)) ?? fetch(request);
}

/** The network first, so that a result is never an old one; without a network what was kept. */
async function page(request: Request, path: string): Promise<Response> {
	const isRead = request.method === 'GET';
	const isKept = isRead && PAGES.includes(path);
	// Whoever opens the app in a park is led on to what works there, and does not wait for a page.
	const isWaitedFor = !isKept && !(isRead && path === START);
	try {
		const answer = await (isWaitedFor ? fetch(request) : inTime(fetch(request)));
		// A server in trouble must not stand between somebody and the numbers to call.
		return answer.status >= 500 && isKept ? ((await caches.match(path)) ?? answer) : answer;
	} catch {
		return (await caches.match(isKept ? path : '/offline')) ?? Response.error();
	}
}

/** Late answers go nowhere: what is kept has been shown by then. */
function inTime(answer: Promise<Response>): Promise<Response> {
	return new Promise((done, failed) => {
		const late = setTimeout(() => failed(new Error('too slow')), PATIENCE_MS);
		void answer.finally(() => clearTimeout(late)).then(done, failed);
	});
}
