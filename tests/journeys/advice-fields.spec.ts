import type { Page } from '@playwright/test';
import { plusDays, todayIn, ZONE } from './days.ts';
import { expect, test } from './test.ts';
import { leadsTo, ready } from './walk.ts';

test.use({ timezoneId: ZONE });

/** A browser without a field for dates shows a plain one, and checks nothing before it sends. */
async function asPlainField(page: Page) {
	await page.locator('#givenOn').evaluate((field) => {
		field.setAttribute('type', 'text');
		field.removeAttribute('max');
	});
}

interface Form {
	readonly date: string;
	readonly role?: string;
	readonly reasons?: readonly string[];
	readonly scope?: string;
	readonly limit?: string;
}

const ANKLES = 'Your ankles swell up.';

async function fill(page: Page, form: Form) {
	await page.goto('/screening/advice');
	await asPlainField(page);
	await page.locator('#givenOn').fill(form.date);
	await page.getByRole('radio', { name: form.role ?? 'A doctor', exact: true }).check();
	for (const reason of form.reasons ?? [ANKLES]) await page.getByLabel(reason).check();
	await page.getByLabel(form.scope ?? 'Walking only').check();
	await page.locator('#limitBpm').fill(form.limit ?? '131');
	await page.getByRole('button', { name: 'Keep this advice' }).click();
}

/** The message stands at the field and at the head, and nothing that was typed is lost. */
async function expectIssue(page: Page, field: string, message: string, form: Form) {
	await expect(page.locator(`#${field}-issue`)).toHaveText(message);
	await expect(page.getByRole('alert').getByRole('link', { name: message })).toHaveAttribute(
		'href',
		`#${field}`
	);
	await asPlainField(page);
	await expect(
		page.getByRole('radio', { name: form.role ?? 'A doctor', exact: true })
	).toBeChecked();
	await expect(page.getByLabel(form.scope ?? 'Walking only')).toBeChecked();
	await expect(page.locator('#limitBpm')).toHaveValue(form.limit ?? '131');
	await expect(page.locator('input[name=covers]:checked')).toHaveCount(form.reasons?.length ?? 1);
	await page.goto('/bands');
	await expect(page).toHaveURL(/\/screening\/result$/);
}

test.beforeEach(async ({ page, phone }) => {
	await page.goto('/screening');
	await ready(page);
	await phone.screen(leadsTo.askFirst);
});

const today = todayIn();
/** The newest 29 February before the year of today that did not exist. */
const noSuchDay = `${[1, 2, 3].map((back) => Number(today.slice(0, 4)) - back).find((year) => year % 4 !== 0)}-02-29`;

const faults: readonly (readonly [string, Form, string, string])[] = [
	['tomorrow', { date: plusDays(today, 1) }, 'givenOn', 'That day has not come yet.'],
	[
		'29 February of a year without one',
		{ date: noSuchDay },
		'givenOn',
		'Pick a day that exists, such as 2026-11-25.'
	],
	[
		'a day in words',
		{ date: 'last week' },
		'givenOn',
		'Pick a day that exists, such as 2026-11-25.'
	],
	[
		'nothing ticked that could open',
		{ date: today, reasons: [], scope: 'Walking and easy running', limit: '' },
		'covers',
		'Tick at least one reason.'
	],
	[
		'a limit from somebody who may not set one',
		{ date: today, role: 'A physiotherapist', reasons: [] },
		'limitBpm',
		'Only a doctor or a nurse can set a pulse limit here. Ask one of them, and leave this empty until then.'
	],
	[
		'a nurse about a sign of illness',
		{ date: today, role: 'A nurse' },
		'covers',
		'This person cannot cover that reason. See who can, beside each one.'
	],
	[
		'a day before the answers',
		{ date: plusDays(today, -1) },
		'givenOn',
		'For a sign like this, the advice has to be from the day of your answers or later.'
	],
	[
		'a limit under a walking pulse',
		{ date: today, limit: '20' },
		'limitBpm',
		'That is lower than a walking pulse. Please look at it again.'
	],
	[
		'a limit in words',
		{ date: today, limit: 'low' },
		'limitBpm',
		'Type a number, or leave it empty.'
	]
];

for (const [title, form, field, message] of faults) {
	test(`${title}: a message at the field, nothing lost, nothing opened`, async ({ page }) => {
		await fill(page, form);
		await expectIssue(page, field, message, form);
	});
}

test('nothing filled in: each question asks for its answer', async ({ page }) => {
	await page.goto('/screening/advice');
	await page.getByRole('button', { name: 'Keep this advice' }).click();
	for (const field of ['givenOn', 'role', 'scope']) {
		await expect(page.locator(`#${field}-issue`)).toHaveText('Please answer this.');
	}
	await expect(page.locator('#limitBpm-issue')).toHaveCount(0);
});
