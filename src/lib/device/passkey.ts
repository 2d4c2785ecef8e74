import {
	startAuthentication,
	startRegistration,
	type PublicKeyCredentialCreationOptionsJSON,
	type PublicKeyCredentialRequestOptionsJSON
} from '@simplewebauthn/browser';

const PATH = '/api/auth/passkey';

/**
 * Adds a passkey for whoever is signed in. False when the person or the browser said no.
 * @param name what the phone shows in its own list of passkeys
 */
export async function addPasskey(name: string): Promise<boolean> {
	try {
		const query = new URLSearchParams({ name });
		const asked = await ask(`${PATH}/generate-register-options?${query}`);
		const optionsJSON = asked as PublicKeyCredentialCreationOptionsJSON;
		const response = await startRegistration({ optionsJSON });
		await ask(`${PATH}/verify-registration`, { response });
		return true;
	} catch {
		return false;
	}
}

/** Signs this browser in with a passkey. False when none fits, or the person said no. */
export async function signInWithPasskey(): Promise<boolean> {
	try {
		const asked = await ask(`${PATH}/generate-authenticate-options`);
		const optionsJSON = asked as PublicKeyCredentialRequestOptionsJSON;
		const response = await startAuthentication({ optionsJSON });
		await ask(`${PATH}/verify-authentication`, { response });
		return true;
	} catch {
		return false;
	}
}

/** @throws Error for every answer but success */
async function ask(path: string, body?: unknown): Promise<unknown> {
	const answer = await fetch(path, {
		method: body === undefined ? 'GET' : 'POST',
		...(body === undefined
			? {}
			: { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) })
	});
	if (!answer.ok) throw new Error(`the passkey endpoint answered ${answer.status}`);
	return answer.json();
}
