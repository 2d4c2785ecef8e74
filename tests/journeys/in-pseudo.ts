import type { Locator, Page } from '@playwright/test';
import { CLOSING, OPENING, pseudoText } from '../pseudo/pseudo-text.js';

/** Marks may stand wherever a word of another text begins or ends. */
const MARKS = `[${OPENING}${CLOSING}]*`;
/** What somebody typed into a form stays as it was: a letter, or what became of it. */
const either = (letter: string) => {
	const [longer] = pseudoText(letter).slice(OPENING.length).split(CLOSING);
	return longer === letter || !longer ? letter : `(?:${letter}|${longer})`;
};

/** The name of something in our language, as a pattern of how the pseudo-language writes it. */
export function patternOf(name: string | RegExp, isExact = false): RegExp {
	const source =
		typeof name === 'string'
			? name.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&')
			: name.source.replaceAll(/^\^|\$$/g, '');
	const written = source.replaceAll(
		/\\.|[\p{L} :,;’“”–]/gu,
		(one) => MARKS + (one.startsWith('\\') ? one : either(one))
	);
	const begins = isExact || (typeof name !== 'string' && name.source.startsWith('^'));
	const ends = isExact || (typeof name !== 'string' && name.source.endsWith('$'));
	const flags = typeof name === 'string' ? (isExact ? 'u' : 'iu') : `${name.flags}u`;
	return new RegExp(`${begins ? '^\\s*' : ''}${written}${MARKS}${ends ? '\\s*$' : ''}`, flags);
}

interface Named {
	name?: string | RegExp;
	exact?: boolean;
	hasText?: string | RegExp;
}

const BY_NAME = new Set(['getByRole']);
const BY_TEXT = new Set(['getByLabel', 'getByText']);

const options = ({ name, hasText, ...rest }: Named = {}) => ({
	...rest,
	...(name === undefined ? {} : { name: patternOf(name, rest.exact) }),
	...(hasText === undefined ? {} : { hasText: patternOf(hasText) })
});

/** A page, or a part of it, on which a walk finds by our words what is there in the pseudo-language. */
export function inPseudo<Part extends Page | Locator>(part: Part): Part {
	return new Proxy(part, {
		get(target, key) {
			const member: unknown = Reflect.get(target, key, target);
			if (typeof member !== 'function' || typeof key !== 'string') return member;
			const call = member.bind(target) as (...given: unknown[]) => unknown;
			if (BY_NAME.has(key)) {
				return (role: string, named?: Named) => inPseudo(call(role, options(named)) as Locator);
			}
			if (BY_TEXT.has(key)) {
				return (text: string | RegExp, named?: Named) =>
					inPseudo(call(patternOf(text, named?.exact)) as Locator);
			}
			if (['nth', 'first', 'last', 'locator', 'filter'].includes(key)) {
				return (...given: unknown[]) => inPseudo(call(...given) as Locator);
			}
			return call;
		}
	});
}
