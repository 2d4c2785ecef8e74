import { createTransport } from 'nodemailer';

export interface Letter {
	readonly to: string;
	readonly subject: string;
	readonly text: string;
}

export interface Mail {
	/**
	 * Writes and sends a letter after the answer has gone, so that the answer takes the same time
	 * whether there is one to send or not.
	 * @param write null when there is nothing to send
	 */
	post(write: () => Promise<Letter | null>): void;
	/** Waits for what is on its way. */
	close(): Promise<void>;
}

export interface MailOptions {
	/** smtp:// or smtps://, with name and password where the server asks for them. */
	readonly smtpUrl: string;
	readonly from: string;
	/** Hears in one line what went wrong, without an address. */
	readonly report: (line: string) => void;
}

const CONNECT_MS = 10_000;
const SILENT_MS = 20_000;

/** Sends mail through the server that the host named. It connects when there is something to send. */
export function openMail({ smtpUrl, from, report }: MailOptions): Mail {
	const transport = createTransport({
		url: smtpUrl,
		connectionTimeout: CONNECT_MS,
		greetingTimeout: CONNECT_MS,
		socketTimeout: SILENT_MS,
		// A letter is what we wrote: it reads no file and no address of its own.
		disableFileAccess: true,
		disableUrlAccess: true
	});
	const onItsWay = new Set<Promise<void>>();
	const send = async (write: () => Promise<Letter | null>) => {
		try {
			const letter = await write();
			if (letter) await transport.sendMail({ from, ...letter });
		} catch (error) {
			report(`mail: ${codeOf(error)}`);
		}
	};
	return {
		post(write) {
			const sending = send(write).finally(() => onItsWay.delete(sending));
			onItsWay.add(sending);
		},
		async close() {
			await Promise.all(onItsWay);
			transport.close();
		}
	};
}

/** The server's answer would name the address. */
function codeOf(error: unknown): string {
	const { code, responseCode, name } = error as Error & { code?: string; responseCode?: number };
	return [code ?? name, responseCode].filter((part) => part !== undefined).join(' ');
}
