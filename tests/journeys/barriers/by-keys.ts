import type { Page } from '@playwright/test';

interface Told {
	/** Each thing to act on, in the order of the document. */
	readonly wanted: readonly string[];
	readonly reached: readonly string[];
	readonly slips: readonly string[];
}

/**
 * Presses Tab from the first thing to act on past the last one: each is reached once and in the order
 * of the document (2.1.1, 2.4.3), none holds the focus (2.1.2), each shows it (2.4.7) with three times
 * the contrast of its ground (1.4.11), and nothing that stays on the screen lies over it (2.4.11).
 */
export async function byKeys(page: Page): Promise<string[]> {
	const presses = await page.evaluate(listen);
	for (let n = 0; n < presses; n++) await page.keyboard.press('Tab');
	const { wanted, reached, slips } = await page.evaluate(() =>
		(window as unknown as { told: () => Told }).told()
	);
	const at = wanted.findIndex((what, n) => what !== reached[n]);
	if (at === -1) return [...slips];
	const order = `2.4.3 after ${at} stops Tab leads to ${reached[at]}, not to ${wanted[at]}`;
	return [...slips, order];
}

/** Runs in the page. Each press of Tab notes what has the focus before it moves on. */
function listen(): number {
	const html = (element: Element) => element.outerHTML.slice(0, 100);
	const isWanted = (element: Element) => {
		const { tabIndex } = element as HTMLElement;
		if (tabIndex < 0 || element.matches(':disabled, [inert] *')) return false;
		if (!element.checkVisibility({ visibilityProperty: true })) return false;
		if (!element.matches('[type=radio]')) return true;
		const { name, form } = element as HTMLInputElement;
		const group = [...document.querySelectorAll<HTMLInputElement>('[type=radio]')].filter(
			(one) => one.name === name && one.form === form && !one.disabled
		);
		return (group.find(({ checked }) => checked) ?? group[0]) === element;
	};
	const wanted = [
		...document.querySelectorAll<HTMLElement>(
			'a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex]'
		)
	].filter(isWanted);
	const reached: Element[] = [];
	const slips: string[] = wanted
		.filter(({ tabIndex }) => tabIndex > 0)
		.map((element) => `2.4.3 an order of its own: ${html(element)}`);

	const note = (focused: Element | null) => {
		if (focused === null || focused === document.body || reached.includes(focused)) return;
		reached.push(focused);
		const seen = focused.closest('.choice') ?? focused;
		const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(seen);
		if (outlineStyle === 'none' || parseFloat(outlineWidth) < 2) {
			slips.push(`2.4.7 the focus is not seen: ${html(focused)}`);
		} else if (window.contrastWithGround(outlineColor, seen.parentElement) < 3) {
			slips.push(`1.4.11 the focus is faint, ${outlineColor}: ${html(focused)}`);
		}
		slips.push(...covered(focused));
	};

	function covered(focused: Element): string[] {
		const { left, right, top, bottom } = focused.getBoundingClientRect();
		if (bottom <= 0 || top >= innerHeight || right <= 0 || left >= innerWidth) {
			return [`2.4.7 the focus is off the screen: ${html(focused)}`];
		}
		const within = (at: number, end: number) => Math.min(Math.max(at, 1), end - 1);
		const xs = [left + 3, (left + right) / 2, right - 3].map((x) => within(x, innerWidth));
		const ys = [top + 3, (top + bottom) / 2, bottom - 3].map((y) => within(y, innerHeight));
		const over = xs
			.flatMap((x) => ys.map((y) => document.elementFromPoint(x, y)))
			.map((above) => staying(above, focused))
			.find((box) => box !== null);
		return over ? [`2.4.11 ${html(over)} lies over ${html(focused)}`] : [];
	}

	/** What stays on the screen, around what lies above, and not around what has the focus. */
	function staying(above: Element | null, focused: Element): Element | null {
		for (let box = above; box && !box.contains(focused); box = box.parentElement) {
			if (['sticky', 'fixed'].includes(getComputedStyle(box).position)) return box;
		}
		return null;
	}

	const key = ({ key }: KeyboardEvent) => key === 'Tab' && note(document.activeElement);
	addEventListener('keydown', key, true);
	Object.assign(window, {
		told: () => {
			removeEventListener('keydown', key, true);
			return { wanted: wanted.map(html), reached: reached.map(html), slips };
		}
	});
	// What has the focus already would not come back to the screen by having it again.
	if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
	wanted[0]?.focus();
	// A date is several stops: its day, month, year, and what opens a calendar.
	const stops = wanted.map((element) => (element.matches('[type=date], [type=time]') ? 4 : 1));
	return stops.reduce((sum, one) => sum + one, 0) + 1;
}
