import { createServer, type Socket } from 'node:net';

/** What reached a mail server: the envelope and the lines of the letter. */
export interface Received {
	readonly from: string;
	readonly to: string;
	readonly data: string;
}

/**
 * A mail server on this computer, as far as a letter needs one: RFC 5321, 3.1 to 3.3 (M).
 * @param refuses the address that it does not know
 */
export async function mailServer(refuses = 'nobody@example.org') {
	const letters: Received[] = [];
	const open = new Set<Socket>();
	const server = createServer((socket) => {
		open.add(socket);
		socket.on('close', () => open.delete(socket));
		talk(socket, refuses, (letter) => letters.push(letter));
	});
	await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
	const address = server.address();
	const port = typeof address === 'object' && address ? address.port : 0;
	return {
		url: `smtp://127.0.0.1:${port}`,
		letters,
		async close() {
			for (const socket of open) socket.destroy();
			await new Promise((closed) => server.close(closed));
		}
	};
}

function talk(socket: Socket, refuses: string, receive: (letter: Received) => void) {
	const say = (line: string) => socket.write(`${line}\r\n`);
	const inBrackets = (line: string) => /<([^>]*)>/.exec(line)?.[1] ?? '';
	let [from, to, rest] = ['', '', ''];
	let data: string[] | null = null;
	const hear = (line: string) => {
		if (data) {
			if (line !== '.') return void data.push(line.replace(/^\.\./, '.'));
			receive({ from, to, data: data.join('\n') });
			data = null;
			return say('250 kept');
		}
		const command = line.slice(0, 4).toUpperCase();
		if (command === 'EHLO' || command === 'HELO') return say('250 mail.example.org');
		if (command === 'MAIL') from = inBrackets(line);
		if (command === 'RCPT') {
			to = inBrackets(line);
			if (to === refuses) return say(`550 <${to}> is unknown here`);
		}
		if (command === 'DATA') {
			data = [];
			return say('354 go on');
		}
		if (command === 'QUIT') return socket.end('221 bye\r\n');
		return say('250 fine');
	};
	say('220 mail.example.org');
	socket.setEncoding('utf8');
	socket.on('error', () => {});
	socket.on('data', (chunk: string) => {
		const lines = (rest + chunk).split('\r\n');
		rest = lines.pop() ?? '';
		for (const line of lines) hear(line);
	});
}
