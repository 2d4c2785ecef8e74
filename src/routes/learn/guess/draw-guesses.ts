import {
	CategoryScale,
	Chart,
	LinearScale,
	LineController,
	LineElement,
	PointElement
} from 'chart.js';
import { pageColours } from '$lib/components/page-colours.ts';

Chart.register(LineController, LineElement, PointElement, CategoryScale, LinearScale);

export interface GuessesDrawn {
	/** How far off, in the order in which they were made; below zero was too low. */
	readonly off: readonly number[];
	readonly axis: string;
	readonly tries: string;
}

/**
 * Draws how far off each guess was, about a line at zero. Colours are read from the page, and read
 * again when the light changes.
 * @returns a function that takes the chart down
 */
export function drawGuesses(canvas: HTMLCanvasElement, drawn: GuessesDrawn): () => void {
	let chart = make(canvas, drawn);
	const redraw = () => {
		chart.destroy();
		chart = make(canvas, drawn);
	};
	const light = matchMedia('(prefers-color-scheme: dark)');
	light.addEventListener('change', redraw);
	return () => {
		light.removeEventListener('change', redraw);
		chart.destroy();
	};
}

function make(canvas: HTMLCanvasElement, { off, axis, tries }: GuessesDrawn): Chart {
	const colour = pageColours(canvas);
	const text = { color: colour('--muted'), font: { family: colour('--plain'), size: 14 } };
	// Even, so that the middle is one of the lines.
	const furthest = 2 * Math.ceil(Math.max(4, ...off.map(Math.abs)) / 2);
	return new Chart(canvas, {
		type: 'line',
		data: {
			labels: off.map((_, at) => String(at + 1)),
			datasets: [
				{
					data: [...off],
					borderColor: colour('--effort-3'),
					pointBackgroundColor: colour('--effort-5'),
					pointBorderColor: colour('--effort-5'),
					pointRadius: 5
				}
			]
		},
		options: {
			animation: false,
			maintainAspectRatio: false,
			events: [],
			scales: {
				x: {
					title: { display: true, text: tries, ...text },
					ticks: text,
					grid: { display: false }
				},
				y: {
					min: -furthest,
					max: furthest,
					title: { display: true, text: axis, ...text },
					ticks: { ...text, stepSize: furthest / 2 },
					grid: {
						color: ({ tick }) => colour(tick.value === 0 ? '--ink' : '--line'),
						lineWidth: ({ tick }) => (tick.value === 0 ? 2 : 1)
					}
				}
			}
		}
	});
}
