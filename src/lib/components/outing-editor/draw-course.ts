import type { Drawn } from './drawn.ts';

/** Where minutes and levels lie on the canvas. */
export interface OnCanvas {
	readonly x: (minutes: number) => number;
	readonly y: (level: number) => number;
}

export interface CourseColours {
	readonly band: string;
	readonly edge: string;
	readonly spread: string;
	readonly middle: string;
}

/** Draws the bands of an outing, and over them the expected pulse with its spread. */
export function drawCourse(
	ctx: CanvasRenderingContext2D,
	to: OnCanvas,
	drawn: Drawn,
	colours: CourseColours
): void {
	drawBands(ctx, to, drawn, colours);
	drawSpread(ctx, to, drawn, colours);
	drawMiddle(ctx, to, drawn, colours);
}

type Draw = typeof drawCourse;

/** The band of each phase: a run is edged in ink, so that it is told apart without its shade. */
const drawBands: Draw = (ctx, to, { slots }, { band, edge }) => {
	for (const { from, to: until, low, high, isRun } of slots) {
		const [left, right] = [to.x(from), to.x(until)];
		const [top, bottom] = [to.y(high), to.y(low)];
		ctx.fillStyle = band;
		ctx.fillRect(left, top, right - left, bottom - top);
		if (!isRun) continue;
		ctx.fillStyle = edge;
		ctx.fillRect(left, top - 1, right - left, 2);
		ctx.fillRect(left, bottom - 1, right - left, 2);
	}
};

const drawSpread: Draw = (ctx, to, { points }, { spread }) => {
	ctx.beginPath();
	for (const { at, high } of points) ctx.lineTo(to.x(at), to.y(high));
	for (let nth = points.length - 1; nth >= 0; nth--) {
		const { at, low } = points[nth]!;
		ctx.lineTo(to.x(at), to.y(low));
	}
	ctx.globalAlpha = 0.28;
	ctx.fillStyle = spread;
	ctx.fill();
	ctx.globalAlpha = 1;
};

const drawMiddle: Draw = (ctx, to, { points }, { middle }) => {
	ctx.beginPath();
	for (const { at, middle: level } of points) ctx.lineTo(to.x(at), to.y(level));
	ctx.lineWidth = 3;
	ctx.lineJoin = 'round';
	ctx.strokeStyle = middle;
	ctx.stroke();
};
