import { placeFrom } from '$lib/outing/field-name.ts';
import type { Place } from '$lib/outing/edit/place.ts';

interface Dragging {
	/** The list in which something is dragged: whatever in it has data-before is a place to drop at. */
	readonly list: HTMLElement;
	/** A repeat is not dropped into another one. */
	readonly isRepeat: boolean;
	/** Where it would be dropped now, or null for nowhere. */
	readonly over: (to: Place | null) => void;
	readonly drop: (to: Place) => void;
}

/** How near to the edge of the window the page begins to move, and how far in a frame. */
const EDGE_PX = 72;
const SCROLL_PX = 9;

/**
 * Follows a hand, by mouse, pen or finger, from a press on a handle to its end. Escape lets go
 * without a move. Near the edge of the window the page moves along.
 */
export function drag(event: PointerEvent, handle: HTMLElement, dragging: Dragging): void {
	const { list, over, drop } = dragging;
	let y = event.clientY;
	let frame = 0;
	let to: Place | null = null;

	const look = () => {
		to = nearest(list, y, dragging);
		over(to);
	};
	const move = (moved: PointerEvent) => {
		y = moved.clientY;
		look();
	};
	const scroll = () => {
		const way = y < EDGE_PX ? -1 : y > innerHeight - EDGE_PX ? 1 : 0;
		if (way !== 0) {
			scrollBy(0, way * SCROLL_PX);
			look();
		}
		frame = requestAnimationFrame(scroll);
	};
	const end = (isDropped: boolean) => {
		handle.removeEventListener('pointermove', move);
		handle.removeEventListener('pointerup', up);
		handle.removeEventListener('pointercancel', cancel);
		removeEventListener('keydown', key);
		cancelAnimationFrame(frame);
		over(null);
		if (isDropped && to !== null) drop(to);
	};
	const up = () => end(true);
	const cancel = () => end(false);
	const key = ({ key }: KeyboardEvent) => key === 'Escape' && end(false);

	handle.setPointerCapture(event.pointerId);
	handle.addEventListener('pointermove', move);
	handle.addEventListener('pointerup', up);
	handle.addEventListener('pointercancel', cancel);
	addEventListener('keydown', key);
	frame = requestAnimationFrame(scroll);
}

/** The place in front of the first row whose middle lies under the hand, else the last place. */
function nearest(list: HTMLElement, y: number, { isRepeat }: Dragging): Place | null {
	let last: Place | null = null;
	for (const row of list.querySelectorAll<HTMLElement>('[data-before]')) {
		const place = placeFrom(row.dataset['before'] ?? '');
		if (place === null || (isRepeat && place.phase !== null)) continue;
		const { top, height } = row.getBoundingClientRect();
		if (y < top + height / 2) return place;
		last = place;
	}
	return last;
}
