import ts from 'typescript';
import type { SourceFile } from './source-file.ts';

/** Belong to other people's products, or promise more than we can. Nowhere, not even in a comment. */
const never = [
	/\bwork-?outs?\b/i,
	/\breadiness\b/i,
	/\bzone ?[1-5]\b/i,
	/\brecovery score\b/i,
	/\btraining load\b/i,
	/\binterval block\b/i,
	/\bguided runs?\b/i,
	/\bmedical(ly)? (screening|clear(ed|ance))\b/i,
	/\bclearance (form|letter)\b/i,
	/\bPAR-?Q\+? (compliant|validated|based)\b/i
];

/** Fine in code, but on screen each has another word, or means something else to a reader. */
const neverOnScreen = [
	/(?<!\btime )\bzones?\b/i,
	/\bgauge\b/i,
	/\bdial\b/i,
	/\bdiary\b/i,
	/\bcheck-ins?\b/i,
	/\bcleared\b/i,
	/\bthe user\b/i,
	/!/
];

/** May cite the scales and terms of the literature by name. */
const citing = /\/(methods|sources)[^/]*\.ts$/;
const citedNames = [/\bBorg\b/, /\bCR-?10\b/, /\bHRR\b/];

export function wordFaults(files: readonly SourceFile[]): string[] {
	return files.flatMap(({ path, text }) => never.flatMap((word) => found(path, text, word)));
}

/** @param files of the words; only their texts are looked at */
export function screenFaults(files: readonly SourceFile[]): string[] {
	return files.flatMap(({ path, text }) => {
		const words = citing.test(path) ? neverOnScreen : [...neverOnScreen, ...citedNames];
		return textsIn(path, text).flatMap((shown) =>
			words.flatMap((word) => found(path, shown, word))
		);
	});
}

function found(path: string, text: string, word: RegExp): string[] {
	const hit = word.exec(text);
	if (!hit) return [];
	const around = text.slice(Math.max(0, hit.index - 30), hit.index + 30).replaceAll('\n', ' ');
	return [`${path}: "${hit[0]}" in "${around}"`];
}

function textsIn(path: string, text: string): string[] {
	const texts: string[] = [];
	visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
	return texts;

	function visit(node: ts.Node) {
		if (ts.isImportDeclaration(node)) return;
		if (ts.isStringLiteralLike(node) || ts.isTemplateLiteralToken(node)) texts.push(node.text);
		ts.forEachChild(node, visit);
	}
}
