import { expect, test, type Page } from '@playwright/test';
import { byKeys } from './barriers/by-keys.ts';
import { bringContrast } from './barriers/contrast.ts';
import { heard } from './barriers/heard.ts';
import { inOwnColours } from './barriers/own-colours.ts';
import { cutOff, scrollsSideways, stuck, tooWide } from './barriers/room.ts';
import { tooSmall } from './barriers/targets.ts';
import { wider } from './barriers/wider-text.ts';

// The looks at barriers find one where there is one. The pages are made up, each with one slip.

const whenWider = async (page: Page) => {
	const found: string[] = [];
	await wider(page, async () => void found.push(...(await cutOff(page))));
	return found;
};

const button = '<button style="outline-color: black">Go on</button>';

const slips: readonly (readonly [string, string, (page: Page) => Promise<string[]>])[] = [
	['1.4.10 the page', '<p style="width: 900px">Wide</p>', tooWide],
	[
		'1.4.10 scrolls sideways',
		'<div style="overflow: auto; width: 90px"><p style="width: 400px">Wide</p></div>',
		scrollsSideways
	],
	['1.4.10 what stays', '<div style="position: fixed; height: 80vh">Bar</div>', stuck],
	[
		'1.4.12 cut off',
		'<div style="overflow: hidden; height: 20px; width: 150px">Twenty letters in a row</div>',
		whenWider
	],
	['2.5.5 too small', '<a href="/on">on</a>', tooSmall],
	['2.4.3 an order of its own', `${button}<a href="/on" tabindex="2">on</a>`, byKeys],
	['2.4.3 after 1 stops', `${button}<input onfocus="this.blur()" aria-label="Age">`, byKeys],
	[
		'2.4.3 after 1 stops',
		'<button onkeydown="event.preventDefault()">Go on</button><button>Back</button>',
		byKeys
	],
	['2.4.7 the focus is not seen', '<button style="outline: none">Go on</button>', byKeys],
	['1.4.11 the focus is faint', '<button style="outline: 3px solid #ddd">Go on</button>', byKeys],
	[
		'2.4.7 the focus is off the screen',
		'<button style="position: absolute; left: -900px">Go on</button>',
		byKeys
	],
	[
		'2.4.11',
		`${button}<div style="position: fixed; inset: 0; background: white">Bar</div>`,
		byKeys
	],
	['4.1.2 a button without a name', '<button></button>', heard],
	['4.1.2 a img without a name', '<svg role="img" width="9" height="9"></svg>', heard],
	['2.4.9 the link “More”', '<a href="/one">More</a> <a href="/two">More</a>', heard],
	['2.3.3 moves', '<p style="transition: color 1s">Text</p>', inOwnColours],
	['1.4.11 no edge', '<button style="border: 0">Go on</button>', inOwnColours],
	['2.4.7 no ring', '<a href="/on" style="outline: none">on</a>', inOwnColours],
	[
		'1.4.11 a picture is gone',
		'<svg width="9" height="9"><path d="M0 0h9v9z" style="fill: white"/></svg>',
		inOwnColours
	]
];

for (const [criterion, html, check] of slips) {
	test(`found: ${criterion}: ${html.slice(0, 60)}`, async ({ page }) => {
		await page.setViewportSize({ width: 320, height: 256 });
		await page.setContent(`<!doctype html><html lang="en"><body>${html}</body></html>`);
		await bringContrast(page);
		expect(await check(page)).toContainEqual(expect.stringContaining(criterion));
	});
}

test('nothing is found where nothing is in the way', async ({ page }) => {
	await page.setViewportSize({ width: 320, height: 256 });
	const style = 'outline: 3px solid black; border: 2px solid; min-height: 48px; min-width: 48px';
	await page.setContent(`<!doctype html><html lang="en"><style>:focus-visible { ${style} }</style>
		<body><style>button, input { ${style} } button, input { outline: none }
		:is(button, input):focus { outline: 3px solid black }</style>
		<button>Back</button><input type="radio" name="a" aria-label="Yes"><input type="radio" name="a"
		aria-label="No"><input type="date" aria-label="Day"><button>Go on</button>
		<p>A link <a href="/on">in a sentence</a> is as tall as its words.</p></body></html>`);
	await bringContrast(page);
	const all = [tooWide, scrollsSideways, stuck, whenWider, tooSmall, byKeys, heard, inOwnColours];
	for (const check of all) expect(await check(page)).toEqual([]);
});
