import { expect, type APIRequestContext, type APIResponse } from '@playwright/test';
import { baseline, type Answers } from './walk.ts';

export type Fields = Readonly<Record<string, string | number | readonly string[]>>;

/**
 * What a phone without script sends: addresses and forms, one at a time, and never a redirect that
 * it was not asked to follow.
 */
export class Phone {
	constructor(
		readonly request: APIRequestContext,
		readonly url: string
	) {}

	get(path: string): Promise<APIResponse> {
		return this.request.get(this.url + path, { headers: { accept: 'text/html' }, maxRedirects: 0 });
	}

	/** A form, from a page of the app or, with another origin, from somewhere else. */
	send(path: string, fields: Fields = {}, origin = this.url): Promise<APIResponse> {
		const form = Object.entries(fields).flatMap(([name, values]) =>
			[values].flat().map((value) => [name, String(value)])
		);
		return this.request.post(this.url + path, {
			data: new URLSearchParams(form).toString(),
			headers: { 'content-type': 'application/x-www-form-urlencoded', accept: 'text/html', origin },
			maxRedirects: 0
		});
	}

	/** Sends a form that leads on, and answers where to. */
	async lead(path: string, fields: Fields = {}): Promise<string> {
		const answer = await this.send(path, fields);
		expect(answer.status(), `${path} leads on`).toBe(303);
		return answer.headers().location ?? '';
	}

	/** From the urgent signs to the first question that is open. */
	async begin(): Promise<string> {
		const next = await this.lead('/screening?/answer', { urgent: 'none' });
		return next === '/screening/consent' ? this.lead(next, { agree: 'yes' }) : next;
	}

	/** All questions that are open, to the check page. */
	async answerAll(changes: Answers = {}): Promise<void> {
		const answers: Answers = { ...baseline, ...changes };
		let next = await this.begin();
		while (next !== '/screening/check') {
			const page = await (await this.get(next)).text();
			const question = /name="question" value="([^"]+)"/.exec(page)?.[1] ?? '';
			const answer = answers[question];
			if (answer === undefined)
				throw new Error(`no answer is prepared for "${question}" at ${next}`);
			next = await this.lead(next, { question, answer });
		}
	}

	/** The whole of the first questions; answers where it led. */
	async screen(changes: Answers = {}): Promise<string> {
		await this.answerAll(changes);
		return this.lead('/screening/check', { truth: 'yes' });
	}

	/** One morning's resting pulse, counted for a minute, on the given day. */
	async measureResting(beats: number, on: string): Promise<void> {
		await this.lead('/bands/resting-pulse?/add', { beats, seconds: 60, on });
	}

	/** The heading of the result page. */
	async result(): Promise<string> {
		const page = await (await this.get('/screening/result')).text();
		return /<h1[^>]*>([^<]*)<\/h1>/.exec(page)?.[1] ?? '';
	}
}
