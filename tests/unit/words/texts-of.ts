import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';

const FOLDER = new URL('../../../src/lib/words/en/', import.meta.url);

export interface Text {
	readonly file: string;
	readonly line: number;
	readonly text: string;
}

/** Every text of the words, as written: what is put into a text when it is shown stands as "7". */
export function everyText(): readonly Text[] {
	return readdirSync(FOLDER)
		.filter((name) => name.endsWith('.ts'))
		.flatMap((name) => textsIn(name, readFileSync(new URL(name, FOLDER), 'utf8')));
}

export function textsIn(file: string, code: string): readonly Text[] {
	const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
	const found: Text[] = [];
	const visit = (node: ts.Node): void => {
		if (isName(node)) return;
		const text = textOf(node);
		if (text !== null) {
			const { line } = source.getLineAndCharacterOfPosition(node.getStart());
			found.push({ file, line: line + 1, text });
		}
		if (text === null || ts.isTemplateExpression(node)) ts.forEachChild(node, visit);
	};
	visit(source);
	return found;
}

/** A string that names something of the code: what is imported, a type, a key. */
function isName(node: ts.Node): boolean {
	return ts.isImportDeclaration(node) || ts.isTypeNode(node) || ts.isInterfaceDeclaration(node);
}

function textOf(node: ts.Node): string | null {
	if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) {
		const isKey = ts.isPropertyAssignment(node.parent) && node.parent.name === node;
		return isKey ? null : node.text;
	}
	if (!ts.isTemplateExpression(node)) return null;
	return node.head.text + node.templateSpans.map(({ literal }) => `7${literal.text}`).join('');
}
