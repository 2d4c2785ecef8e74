import { BarController, BarElement, CategoryScale, Chart, LinearScale, Tooltip } from 'chart.js';
import { pageColours } from '$lib/components/page-colours.ts';
import type { PulseBandView } from './view.ts';

Chart.register(BarController, BarElement, CategoryScale, LinearScale, Tooltip);

export interface ChartData {
	readonly rows: readonly ({ readonly name: string } & PulseBandView)[];
	readonly restingBpm: number;
	readonly maximumBpm: number;
	readonly axis: string;
}

/**
 * Draws the bands as floating bars, each over a paler one that adds its spread. Colours are read
 * from the page, and read again when the light changes.
 *
 * @returns a function that takes the chart down
 */
export function drawChart(canvas: HTMLCanvasElement, data: ChartData): () => void {
	let chart = make(canvas, data);
	const redraw = () => {
		chart.destroy();
		chart = make(canvas, data);
	};
	const light = matchMedia('(prefers-color-scheme: dark)');
	light.addEventListener('change', redraw);
	return () => {
		light.removeEventListener('change', redraw);
		chart.destroy();
	};
}

function make(canvas: HTMLCanvasElement, { rows, restingBpm, maximumBpm, axis }: ChartData): Chart {
	const colour = pageColours(canvas);
	const band = rows.map((row) => [row.lowBpm ?? restingBpm, row.highBpm] as [number, number]);
	const spread = rows.map(
		(row) =>
			[
				Math.max(restingBpm, (row.lowBpm ?? restingBpm) - (row.lowSpreadBpm ?? 0)),
				Math.min(maximumBpm, row.highBpm + row.highSpreadBpm)
			] as [number, number]
	);
	const text = { color: colour('--muted'), font: { family: colour('--plain'), size: 14 } };
	const bar = { grouped: false, borderSkipped: false };
	return new Chart(canvas, {
		type: 'bar',
		data: {
			labels: rows.map(({ name }) => name),
			datasets: [
				{ ...bar, data: band, backgroundColor: colour('--effort-5'), barPercentage: 0.42 },
				{ ...bar, data: spread, backgroundColor: colour('--effort-2'), barPercentage: 0.75 }
			]
		},
		options: {
			indexAxis: 'y',
			animation: false,
			maintainAspectRatio: false,
			events: [],
			scales: {
				x: {
					min: restingBpm,
					max: maximumBpm,
					title: { display: true, text: axis, ...text },
					ticks: text,
					grid: { color: colour('--line') }
				},
				y: { ticks: { ...text, color: colour('--ink') }, grid: { display: false } }
			},
			plugins: { tooltip: { enabled: false } }
		}
	});
}
