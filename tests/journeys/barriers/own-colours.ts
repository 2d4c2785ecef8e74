import type { Page } from '@playwright/test';

/**
 * In colours that a reader forces, and for one who asks for less motion. Common practice, no source,
 * for the first: each control has an edge or a line under it, each picture a stroke that is seen, and
 * the focus a ring, all with three times the contrast of their ground (1.4.11). Nothing moves (2.3.3,
 * level AAA, which is this app's own rule).
 */
export async function inOwnColours(page: Page): Promise<string[]> {
	await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
	const found = await page.evaluate(look);
	await page.emulateMedia({ forcedColors: null, reducedMotion: null });
	return found;
}

/** Runs in the page. */
function look(): string[] {
	const html = (element: Element) => element.outerHTML.slice(0, 100);
	const all = [...document.querySelectorAll<HTMLElement>('body, body *')];
	const found: string[] = [];

	const moving = document.getAnimations().length;
	if (moving > 0) found.push(`2.3.3 ${moving} animations`);
	for (const element of all) {
		if (moves(element)) found.push(`2.3.3 moves: ${html(element)}`);
	}

	const CONTROL = 'button, .button, select, textarea, input:not([type=hidden])';
	const groups = new Set<string>();
	const before = document.activeElement;
	for (const element of all.filter((one) => one.checkVisibility({ visibilityProperty: true }))) {
		// What only a pointer moves has a twin for everybody else.
		if (element.matches(CONTROL) && !element.matches('[aria-hidden=true]')) {
			if (!hasEdge(element)) found.push(`1.4.11 no edge in own colours: ${html(element)}`);
		}
		if (takesFocus(element) && !hasRing(element)) {
			found.push(`2.4.7 no ring in own colours: ${html(element)}`);
		}
		if (element.matches('svg') && !isDrawn(element)) {
			found.push(`1.4.11 a picture is gone in own colours: ${html(element)}`);
		}
		if (getComputedStyle(element).maskImage !== 'none') {
			found.push(`1.4.11 a mask is filled by the ground: ${html(element)}`);
		}
	}
	if (before instanceof HTMLElement) before.focus();
	return found;

	function moves(element: Element): boolean {
		return [null, '::before', '::after'].some((part) => {
			const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element, part);
			const lasts = transitionDuration.split(',').some((time) => parseFloat(time) > 0);
			return animationName !== 'none' || lasts || scrollBehavior !== 'auto';
		});
	}

	/** Of circles the first: where the focus was in a group, Tab goes back to. */
	function takesFocus(element: HTMLElement): boolean {
		if (element.tabIndex < 0 || element.matches(':disabled')) return false;
		if (!element.matches('[type=radio]')) return true;
		const name = element.getAttribute('name') ?? '';
		const isFirst = !groups.has(name);
		groups.add(name);
		return isFirst;
	}

	function hasRing(element: HTMLElement): boolean {
		element.focus();
		const seen = element.closest('.choice') ?? element;
		const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(seen);
		const isThere = outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
		return isThere && window.contrastWithGround(outlineColor, seen.parentElement) >= 3;
	}

	function hasEdge(element: Element): boolean {
		if (element.matches('[type=checkbox], [type=radio], [type=range], [type=file]')) return true;
		const { borderBottomStyle, borderBottomWidth, borderBottomColor, textDecorationLine } =
			getComputedStyle(element);
		if (textDecorationLine.includes('underline')) return true;
		const isThere = borderBottomStyle !== 'none' && parseFloat(borderBottomWidth) >= 1;
		return isThere && window.contrastWithGround(borderBottomColor, element.parentElement) >= 3;
	}

	function isDrawn(svg: Element): boolean {
		const shapes = [...svg.querySelectorAll('path, line, rect, circle, polygon, polyline, text')];
		const isSeen = (colour: string) =>
			colour.startsWith('rgb') && window.contrastWithGround(colour, svg.parentElement) >= 3;
		return (
			shapes.length === 0 ||
			shapes.some((shape) => {
				const { fill, stroke } = getComputedStyle(shape);
				return isSeen(fill) || isSeen(stroke);
			})
		);
	}
}
