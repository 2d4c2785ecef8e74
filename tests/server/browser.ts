import type { RequestEvent as PageEvent } from '@sveltejs/kit';
import { openAuth, type Auth } from '$lib/server/auth.ts';
import type { Mail } from '$lib/server/mail.ts';
import type { Kysely } from 'kysely';
import type { Database } from '$lib/server/database/tables.ts';

export const ORIGIN = 'https://run.example.org';

export interface Kept {
	readonly value: string;
	readonly options: Record<string, unknown>;
}

/** A browser with a cookie jar, asking a house through pages and through the sign-in endpoints. */
export class Browser {
	readonly jar = new Map<string, Kept>();
	readonly auth: Auth;
	/** What the sign-in library complained about. */
	readonly reports: string[] = [];

	constructor(
		database: Kysely<Database>,
		origin: string | null = ORIGIN,
		mail: Mail | null = null
	) {
		const cookies = {
			set: (name: string, value: string, options: Record<string, unknown>) =>
				this.keep(name, value, options)
		};
		this.auth = openAuth({
			database,
			origin,
			port: 3000,
			secret: 'a-secret-for-tests-alone-a-secret-for-tests',
			deviceCodeKey: Buffer.alloc(32, 9),
			attemptKey: Buffer.alloc(32, 10),
			mail,
			requestEvent: () => ({ cookies }) as unknown as PageEvent,
			report: (line) => this.reports.push(line)
		});
	}

	keep(name: string, value: string, options: Record<string, unknown>): void {
		if (options['maxAge'] === 0) this.jar.delete(name);
		else this.jar.set(name, { value, options });
	}

	/** What it sends with a page or a form. */
	headers(more: Record<string, string> = {}): Headers {
		const cookies = [...this.jar].map(
			([name, { value }]) => `${name}=${encodeURIComponent(value)}`
		);
		const cookie: Record<string, string> = cookies.length ? { cookie: cookies.join('; ') } : {};
		return new Headers({ 'user-agent': 'A browser', ...cookie, ...more });
	}

	/** A request from a script to the sign-in endpoints. */
	async ask(
		method: string,
		path: string,
		body?: unknown,
		{ origin = ORIGIN, address = '192.0.2.7', headers = {} } = {}
	): Promise<Response> {
		const sent = this.headers({
			...(origin === null ? {} : { origin }),
			...(body === undefined ? {} : { 'content-type': 'application/json' }),
			...headers
		});
		const init = {
			method,
			headers: sent,
			...(body === undefined ? {} : { body: JSON.stringify(body) })
		};
		const response = await this.auth.handle(new Request(`${ORIGIN}${path}`, init), address);
		for (const line of response.headers.getSetCookie()) this.#read(line);
		return response;
	}

	#read(line: string): void {
		const [pair = '', ...attributes] = line.split('; ');
		const at = pair.indexOf('=');
		const maxAge = attributes.find((one) => one.startsWith('Max-Age='))?.slice(8);
		const options = maxAge === undefined ? {} : { maxAge: Number(maxAge) };
		this.keep(pair.slice(0, at), decodeURIComponent(pair.slice(at + 1)), options);
	}
}
