import { Chart, LinearScale, type Plugin } from 'chart.js';
import { pageColours } from '../page-colours.ts';
import { drawCourse, type CourseColours, type OnCanvas } from './draw-course.ts';
import type { Drawn } from './drawn.ts';

Chart.register(LinearScale);

export interface Drawing {
	/** Draws at once, over the axes as they stand where the outing fits them. */
	follow(drawn: Drawn): void;
	/** Draws with axes of its own. */
	settle(drawn: Drawn): void;
	destroy(): void;
}

export interface Axes {
	readonly time: string;
	readonly level: string;
	/** Where the upright one begins and ends. */
	readonly from: number;
	readonly to: number;
}

/** While a length is dragged the time axis keeps its end as long as so much of it is used. */
const USED_AT_LEAST = 0.8;
/** And where it has to give way, it has so much room for more. */
const ROOM = 1.15;

/**
 * Draws the expected course with its spread over the band of each phase. Colours are read from the
 * page, and read again when the light changes. The library draws the axes, and works these out anew
 * only where they change: under a hand that drags that is most of its time.
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
		follow(next) {
			drawn = next;
			const end = chart.scales['x']?.max ?? 0;
			if (next.minutes > end || next.minutes < end * USED_AT_LEAST) {
				endAt(chart, Math.ceil(next.minutes * ROOM));
			} else {
				chart.draw();
			}
		},
		settle(next) {
			drawn = next;
			endAt(chart, Math.max(1, next.minutes));
		},
		destroy() {
			light.removeEventListener('change', redraw);
			chart.destroy();
		}
	};
}

function endAt(chart: Chart, minutes: number): void {
	const x = chart.options.scales?.['x'];
	if (x) x.max = minutes;
	chart.update('none');
}

function make(canvas: HTMLCanvasElement, drawn: () => Drawn, axes: Axes): Chart {
	const colour = pageColours(canvas);
	const text = { color: colour('--muted'), font: { family: colour('--plain'), size: 13 } };
	const colours: CourseColours = {
		band: colour('--effort-2'),
		edge: colour('--effort-5'),
		spread: colour('--mark'),
		middle: colour('--ink')
	};
	const course: Plugin = {
		id: 'course',
		beforeDatasetsDraw({ ctx, chartArea, scales }) {
			const [x, y] = [scales['x'], scales['y']];
			if (!x || !y) return;
			const to: OnCanvas = {
				x: (minutes) => x.getPixelForValue(minutes),
				y: (level) => y.getPixelForValue(level)
			};
			const { left, top, width, height } = chartArea;
			ctx.save();
			ctx.beginPath();
			ctx.rect(left, top, width, height);
			ctx.clip();
			drawCourse(ctx, to, drawn(), colours);
			ctx.restore();
		}
	};
	return new Chart(canvas, {
		type: 'line',
		data: { datasets: [] },
		options: {
			animation: false,
			maintainAspectRatio: false,
			events: [],
			scales: {
				x: {
					type: 'linear',
					min: 0,
					max: Math.max(1, drawn().minutes),
					title: { display: true, text: axes.time, ...text },
					ticks: { ...text, maxTicksLimit: 8, includeBounds: false },
					grid: { display: false }
				},
				y: {
					type: 'linear',
					min: axes.from,
					max: axes.to,
					title: { display: true, text: axes.level, ...text },
					ticks: { ...text, stepSize: 20 },
					grid: { color: colour('--line') }
				}
			}
		},
		plugins: [course]
	});
}
