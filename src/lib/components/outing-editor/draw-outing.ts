import {
	Chart,
	Filler,
	LinearScale,
	LineController,
	LineElement,
	PointElement,
	type Plugin
} from 'chart.js';
import type { Drawn } from './drawn.ts';

Chart.register(Filler, LinearScale, LineController, LineElement, PointElement);

export interface Drawing {
	update(drawn: Drawn): void;
	destroy(): void;
}

interface Axes {
	readonly time: string;
	readonly level: string;
}

/**
 * Draws the expected course with its spread over the band of each phase. Colours are read from the
 * page, and read again when the light changes.
 */
export function drawOuting(canvas: HTMLCanvasElement, first: Drawn, axes: Axes): Drawing {
	let drawn = first;
	let chart = make(canvas, () => drawn, axes);
	const redraw = () => {
		chart.destroy();
		chart = make(canvas, () => drawn, axes);
	};
	const light = matchMedia('(prefers-color-scheme: dark)');
	light.addEventListener('change', redraw);
	return {
		update(next) {
			drawn = next;
			fill(chart, drawn);
			chart.update('none');
		},
		destroy() {
			light.removeEventListener('change', redraw);
			chart.destroy();
		}
	};
}

function make(canvas: HTMLCanvasElement, drawn: () => Drawn, axes: Axes): Chart<'line'> {
	const colour = colourReader(canvas);
	const text = {
		color: colour('--muted'),
		font: { family: getComputedStyle(canvas).getPropertyValue('--plain'), size: 13 }
	};
	const line = { parsing: false as const, pointRadius: 0, borderWidth: 0, data: [] };
	const spread = { ...line, backgroundColor: colour('--spread') };
	const slots: Plugin<'line'> = {
		id: 'slots',
		beforeDatasetsDraw: (chart) =>
			drawSlots(chart, drawn(), colour('--effort-2'), colour('--effort-5'))
	};
	const chart = new Chart(canvas, {
		type: 'line',
		data: {
			datasets: [
				{ ...spread, fill: '+1' },
				{ ...line },
				{ ...line, borderWidth: 3, borderColor: colour('--ink') }
			]
		},
		options: {
			animation: false,
			maintainAspectRatio: false,
			normalized: true,
			events: [],
			scales: {
				x: {
					type: 'linear',
					min: 0,
					title: { display: true, text: axes.time, ...text },
					ticks: { ...text, maxTicksLimit: 8 },
					grid: { display: false }
				},
				y: {
					min: 0,
					max: 100,
					title: { display: true, text: axes.level, ...text },
					ticks: { ...text, stepSize: 20 },
					grid: { color: colour('--line') }
				}
			}
		},
		plugins: [slots]
	});
	fill(chart, drawn());
	chart.update('none');
	return chart;
}

function fill(chart: Chart<'line'>, { points, minutes }: Drawn): void {
	const [low, high, middle] = chart.data.datasets;
	if (!low || !high || !middle) return;
	low.data = points.map(({ at, low: y }) => ({ x: at, y }));
	high.data = points.map(({ at, high: y }) => ({ x: at, y }));
	middle.data = points.map(({ at, middle: y }) => ({ x: at, y }));
	const x = chart.options.scales?.['x'];
	if (x) x.max = Math.max(1, minutes);
}

/** The band of each phase: a run is edged in ink, so that it is told apart without its shade. */
function drawSlots(chart: Chart<'line'>, { slots }: Drawn, ground: string, edge: string): void {
	const { ctx, scales } = chart;
	const [x, y] = [scales['x'], scales['y']];
	if (!x || !y) return;
	ctx.save();
	for (const { from, to, low, high, isRun } of slots) {
		const [left, right] = [x.getPixelForValue(from), x.getPixelForValue(to)];
		const [top, bottom] = [y.getPixelForValue(high), y.getPixelForValue(low)];
		ctx.fillStyle = ground;
		ctx.fillRect(left, top, right - left, bottom - top);
		if (!isRun) continue;
		ctx.fillStyle = edge;
		ctx.fillRect(left, top - 1, right - left, 2);
		ctx.fillRect(left, bottom - 1, right - left, 2);
	}
	ctx.restore();
}

/** Custom properties may hold functions of the colour scheme: the browser resolves them for us. */
function colourReader(canvas: HTMLCanvasElement): (name: string) => string {
	return (name) => {
		const probe = document.createElement('span');
		probe.style.setProperty('forced-color-adjust', 'none');
		probe.style.color =
			name === '--spread' ? 'color-mix(in srgb, var(--mark) 28%, transparent)' : `var(${name})`;
		canvas.parentElement?.append(probe);
		const { color } = getComputedStyle(probe);
		probe.remove();
		return color;
	};
}
