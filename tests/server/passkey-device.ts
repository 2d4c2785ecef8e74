import { createHash, generateKeyPairSync, randomBytes, sign, type KeyObject } from 'node:crypto';

/*
 * A phone that holds one passkey, as far as a server can see: W3C Web Authentication Level 2,
 * 6.1 (authenticator data), 6.5 (attestation, format "none"), RFC 9053 7.1 (the key). (M)
 */

interface Options {
	readonly challenge: string;
	readonly rp?: { readonly id?: string };
	readonly rpId?: string;
}

export class PasskeyDevice {
	readonly #id = randomBytes(16);
	readonly #key: KeyObject;
	readonly #cose: Buffer;
	#count = 0;

	readonly #origin: string;

	constructor(origin: string) {
		this.#origin = origin;
		const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
		const { x = '', y = '' } = publicKey.export({ format: 'jwk' });
		this.#key = privateKey;
		this.#cose = Buffer.concat([
			Buffer.from('a5010203262001215820', 'hex'),
			Buffer.from(x, 'base64url'),
			Buffer.from('225820', 'hex'),
			Buffer.from(y, 'base64url')
		]);
	}

	register({ challenge, rp }: Options) {
		const length = Buffer.from([0, this.#id.length]);
		const made = [Buffer.alloc(16), length, this.#id, this.#cose];
		const data = Buffer.concat([this.#data(rp?.id ?? '', 0x45), ...made]);
		const attestation = Buffer.concat([
			Buffer.from('a363666d74646e6f6e656761747453746d74a0686175746844617461', 'hex'),
			Buffer.from([0x58, data.length]),
			data
		]);
		return this.#answer({
			clientDataJSON: this.#clientData('webauthn.create', challenge).toString('base64url'),
			attestationObject: attestation.toString('base64url'),
			transports: ['internal']
		});
	}

	authenticate({ challenge, rpId }: Options) {
		const data = this.#data(rpId ?? '', 0x05);
		const client = this.#clientData('webauthn.get', challenge);
		const signed = Buffer.concat([data, createHash('sha256').update(client).digest()]);
		return this.#answer({
			clientDataJSON: client.toString('base64url'),
			authenticatorData: data.toString('base64url'),
			signature: sign('sha256', signed, this.#key).toString('base64url')
		});
	}

	#answer(response: Record<string, unknown>) {
		const id = this.#id.toString('base64url');
		return { id, rawId: id, type: 'public-key', clientExtensionResults: {}, response };
	}

	#data(rpId: string, flags: number): Buffer {
		const count = Buffer.alloc(4);
		count.writeUInt32BE(this.#count++);
		return Buffer.concat([createHash('sha256').update(rpId).digest(), Buffer.of(flags), count]);
	}

	#clientData(type: string, challenge: string): Buffer {
		return Buffer.from(
			JSON.stringify({ type, challenge, origin: this.#origin, crossOrigin: false })
		);
	}
}
