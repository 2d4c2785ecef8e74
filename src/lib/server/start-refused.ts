/**
 * The server cannot start with what it was given. The message is one line, says what to do, and
 * holds no secret: it is printed as it is and the process ends.
 */
export class StartRefused extends Error {
	override name = 'StartRefused';
}
