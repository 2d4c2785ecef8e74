import { parse, type AST } from 'svelte/compiler';
import type { SourceFile } from './source-file.ts';

/** Attributes that a person reads or hears. */
const spoken = new Set(['alt', 'aria-label', 'aria-description', 'label', 'placeholder', 'title']);

/** Marks of notation, not of a language. */
const notation = /^(×|·|–|°)$/;

/** Text in a component that is not taken from the words, so that no translation could reach it. */
export function bareTexts(files: readonly SourceFile[]): string[] {
	return files.flatMap(({ path, text }) => {
		const { fragment } = parse(text, { modern: true });
		return textsUnder(fragment, false)
			.filter((found) => /\p{L}/u.test(found) && !notation.test(found.trim()))
			.map((found) => `${path}: "${found.trim()}"`);
	});
}

type Node = AST.SvelteNode | AST.Fragment;

function textsUnder(node: unknown, isInAttribute: boolean): string[] {
	if (Array.isArray(node)) return node.flatMap((one) => textsUnder(one, isInAttribute));
	if (typeof node !== 'object' || node === null) return [];
	const { type } = node as Node;
	if (type === 'Text') return isInAttribute ? [] : [(node as AST.Text).data];
	if (type === 'Attribute') return textsOfAttribute(node as AST.Attribute);
	if (type === 'ExpressionTag') return literalsIn((node as AST.ExpressionTag).expression);
	if (type === 'StyleSheet' || type === 'Script' || type === 'Comment') return [];
	const children = Object.entries(node).filter(([key]) => !['metadata', 'parent'].includes(key));
	return children.flatMap(([, child]) => textsUnder(child, isInAttribute));
}

function textsOfAttribute({ name, value }: AST.Attribute): string[] {
	if (!spoken.has(name) || value === true) return [];
	return [value]
		.flat()
		.flatMap((part) => (part.type === 'Text' ? [part.data] : literalsIn(part.expression)));
}

/** What is shown of an expression when it comes to a text of its own: a ? 'this' : 'that'. */
function literalsIn(expression: AST.ExpressionTag['expression']): string[] {
	switch (expression.type) {
		case 'Literal':
			return typeof expression.value === 'string' ? [expression.value] : [];
		case 'TemplateLiteral':
			return expression.quasis.map(({ value }) => value.cooked ?? value.raw);
		case 'ConditionalExpression':
			return [...literalsIn(expression.consequent), ...literalsIn(expression.alternate)];
		case 'LogicalExpression':
			return [...literalsIn(expression.left), ...literalsIn(expression.right)];
		default:
			return [];
	}
}
