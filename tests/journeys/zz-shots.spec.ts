import { test } from './test.ts';
import { Phone } from './phone.ts';
import { todayIn } from './days.ts';
import { leadsTo } from './walk.ts';
test.setTimeout(300000);
for (const [width, scheme] of [[1280,'light'],[1280,'dark']] as const)
test(`shots ${width} ${scheme}`, async ({ browser, house }) => {
	async function both(name: string, prep: (p: Phone) => Promise<void>, paths: string[][]) {
		const c = await browser.newContext({ baseURL: house.url, viewport: { width, height: 800 }, colorScheme: scheme });
		const page = await c.newPage();
		await prep(new Phone(c.request, house.url));
		for (const [n, p] of paths) { await page.goto(p!); await page.waitForTimeout(500); await page.screenshot({ path: `/tmp/shots/${name}-${n}-${width}-${scheme}.png`, fullPage: true }); }
		await c.close();
	}
	await both('none', async () => {}, [['start','/'],['urgent','/screening'],['safety','/safety']]);
	await both('run', async (p) => { await p.screen(); await p.measureResting(68, todayIn('UTC')); }, [['result','/screening/result'],['bands','/bands'],['account','/account']]);
	await both('ask', async (p) => { await p.begin(); await p.answerAll(leadsTo.askFirst); }, [['check','/screening/check'],['q10','/screening/questions/10']]);
	await both('ask2', async (p) => { await p.screen(leadsTo.askFirst); }, [['result','/screening/result'],['doctor','/screening/doctor'],['advice','/screening/advice']]);
});
