import type { SourceFile } from './source-file.ts';

/** Addresses that may stand in what we ship, each with its reason. A page asks no other host. */
const known: Readonly<Record<string, string>> = {
	'www.w3.org': 'names of XML namespaces, never asked for',
	'www.topografix.com': 'the name of the GPX namespace, never asked for',
	'doi.org': 'where a cited paper is found',
	'www.sqlite.org': 'documents a result code',
	'www.postgresql.org': 'documents an error code',
	'run.example.org': 'an example in a message; example.org belongs to nobody',
	localhost: 'this computer',
	'127.0.0.1': 'this computer'
};

export function strangeHosts(files: readonly SourceFile[]): string[] {
	return files.flatMap(({ path, text }) =>
		[...text.matchAll(/\b(?:https?|wss?):\/\/([^\s/:"'`)>$]*)/g)]
			.map(([, host = '']) => host)
			.filter((host) => host !== '' && !(host in known))
			.map((host) => `${path} names ${host}`)
	);
}
