/**
 * The page's own colours for a drawing. Custom properties may hold functions of the colour scheme:
 * the browser resolves them for us.
 */
export function pageColours(canvas: HTMLCanvasElement): (name: string) => string {
	return (name) => {
		if (name === '--plain') return getComputedStyle(canvas).getPropertyValue(name);
		const probe = document.createElement('span');
		// Where a reader forces colours, words take theirs, but two shades in one would say nothing.
		if (name.startsWith('--effort')) probe.style.setProperty('forced-color-adjust', 'none');
		probe.style.color = `var(${name})`;
		canvas.parentElement?.append(probe);
		const { color } = getComputedStyle(probe);
		probe.remove();
		return color;
	};
}
