import { answerDay, button, heading, open, take, usualIs } from './an-outing.ts';
import { expect, test } from './test.ts';

/*
 * How fast, outdoors: a pace or a speed, in the units that somebody chose. Expected values by hand
 * from the international mile, 1609.344 m (NIST SP 811).
 */

test.use({ viewport: { width: 360, height: 780 } });

const place = { outdoors: 'Outdoors', treadmill: 'On a treadmill' };

test('outdoors a runner chooses pace or speed, in their own units, and it stays chosen', async ({
	page,
	phone,
	context
}) => {
	await phone.screen();
	await phone.lead('/bands/about-you', {
		name: '',
		sex: 'none',
		speedUnits: 'mph',
		paceUnits: 'min/mile'
	});
	const phase = { cue: '', target: null, inclinePercent: null };
	await usualIs(context, {
		name: 'The plain outing',
		parts: [
			{
				times: 1,
				phases: [
					{ kind: 'warm-up-walk', seconds: 420, speedKmh: 5, ...phase },
					{ kind: 'steady-run', seconds: 30, speedKmh: null, ...phase },
					{ kind: 'cool-down-walk', seconds: 420, speedKmh: null, ...phase }
				]
			}
		]
	});
	const begin = async (where: string) => {
		await take(page);
		await answerDay(page);
		await page.getByLabel(where, { exact: true }).check();
	};
	const end = async () => {
		await button(page, 'End early').click();
		await button(page, 'End now').click();
		await expect(heading(page)).toHaveText('Done');
		await page.goto('/prompter');
	};

	await open(page);
	await begin(place.outdoors);
	await expect(page.getByLabel('Pace (min/mile)')).toBeChecked();
	await button(page, 'Start').click();
	// 5 km/h: a mile in 19 min 18.7 s.
	await expect(page.getByText('19:19 min/mile')).toBeVisible();
	await button(page, 'Skip this part').click();
	await expect(heading(page)).toHaveText('Steady run');
	// No fitness is known: from the slowest running, 5 km/h, on.
	await expect(page.getByText('begin at 19:19 min/mile')).toBeVisible();
	await expect(page.getByText('mph')).toHaveCount(0);
	await end();

	await begin(place.outdoors);
	await page.getByLabel('Speed (mph)').check();
	await button(page, 'Start').click();
	// 5 / 1.609344 = 3.107.
	await expect(page.getByText('3.1 mph')).toBeVisible();
	await expect(page.getByText('min/mile')).toHaveCount(0);
	await end();

	await begin(place.outdoors);
	await expect(page.getByLabel('Speed (mph)')).toBeChecked();
	await page.getByLabel('Pace (min/mile)').check();
	await page.getByLabel(place.treadmill, { exact: true }).check();
	await expect(page.getByLabel('Pace (min/mile)')).toHaveCount(0);
	await page.getByLabel('I have read this').check();
	await button(page, 'Start').click();
	// A belt shows a speed.
	await expect(page.getByText('3.1 mph')).toBeVisible();
});
