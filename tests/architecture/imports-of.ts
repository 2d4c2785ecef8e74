import { parse } from 'svelte/compiler';
import ts from 'typescript';
import type { SourceFile } from './source-file.ts';

export interface Import {
	readonly from: string;
	/** Leaves nothing behind in the running code. */
	readonly isTypeOnly: boolean;
}

/** Everything that a file asks for, whether it does so at its top, on the way or in a type. */
export function importsOf({ path, text }: SourceFile): Import[] {
	return scriptsOf(path, text).flatMap((script) => {
		const found: Import[] = [];
		visit(ts.createSourceFile(path, script, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS));
		return found;

		function visit(node: ts.Node) {
			const one = importAt(node);
			if (one) found.push(one);
			ts.forEachChild(node, visit);
		}
	});
}

function importAt(node: ts.Node): Import | null {
	if (ts.isImportDeclaration(node)) return named(node.moduleSpecifier, isTypeOnly(node));
	if (ts.isExportDeclaration(node)) return named(node.moduleSpecifier, node.isTypeOnly);
	if (ts.isImportTypeNode(node)) {
		return ts.isLiteralTypeNode(node.argument) ? named(node.argument.literal, true) : null;
	}
	const isDynamic =
		ts.isCallExpression(node) &&
		(node.expression.kind === ts.SyntaxKind.ImportKeyword ||
			(ts.isIdentifier(node.expression) && node.expression.text === 'require'));
	return isDynamic ? named(node.arguments[0], false) : null;
}

function named(specifier: ts.Node | undefined, isTypeOnly: boolean): Import | null {
	if (specifier === undefined) return null;
	// A name that is put together while running could be anything.
	const from = ts.isStringLiteralLike(specifier) ? specifier.text : '(a computed name)';
	return { from, isTypeOnly };
}

function isTypeOnly({ importClause }: ts.ImportDeclaration): boolean {
	if (!importClause) return false;
	if (importClause.phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
	const { name, namedBindings } = importClause;
	return (
		name === undefined &&
		namedBindings !== undefined &&
		ts.isNamedImports(namedBindings) &&
		namedBindings.elements.every((element) => element.isTypeOnly)
	);
}

/** Both scripts of a component, or the whole of any other file. */
function scriptsOf(path: string, text: string): string[] {
	if (!path.endsWith('.svelte')) return [text];
	const { instance, module } = parse(text, { modern: true });
	return [instance, module].flatMap((script) => {
		if (!script) return [];
		const { start, end } = script.content as unknown as { start: number; end: number };
		return [text.slice(start, end)];
	});
}
