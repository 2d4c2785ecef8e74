import { createServer, request } from 'node:http';
import type { AddressInfo } from 'node:net';

/** A way to a house that can be made slow: it hands on everything, and answers to pages late. */
export class SlowWay {
	delayMs = 0;
	/** Paths of the pages that were asked for. */
	readonly asked: string[] = [];
	#server = createServer((asking, answering) => {
		const isPage = asking.headers['sec-fetch-mode'] === 'navigate';
		if (isPage) this.asked.push(asking.url ?? '');
		const { method = 'GET', headers, url } = asking;
		const onward = request(new URL(url ?? '/', this.to), { method, headers }, (answer) => {
			setTimeout(
				() => {
					answering.writeHead(answer.statusCode ?? 500, answer.headers);
					answer.pipe(answering);
				},
				isPage ? this.delayMs : 0
			);
		});
		onward.on('error', () => answering.destroy());
		asking.pipe(onward);
	});

	private constructor(readonly to: string) {}

	static async build(to: string): Promise<SlowWay> {
		const way = new SlowWay(to);
		await new Promise<void>((done) => way.#server.listen(0, 'localhost', done));
		return way;
	}

	get url(): string {
		return `http://localhost:${(this.#server.address() as AddressInfo).port}`;
	}

	close(): void {
		this.#server.closeAllConnections();
		this.#server.close();
	}
}
