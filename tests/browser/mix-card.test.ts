import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  expectAccessible,
  expectNoSideways,
  openBrowser,
  picturedOnFailure,
  visit,
  wedge,
} from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';

/** A page is awake when its scripts listen; what is typed before is lost. */
const awake = (page: Page) => page.waitForLoadState('networkidle').then(() => page.waitForTimeout(1000));

const SOON = { timeout: 15_000 };

describe('a pour from its sheet to its last undone weighing', () => {
  let served: Served;
  let browser: Browser;
  beforeAll(async () => {
    served = await serve({}, 'scripts/demo.ts');
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  it('is planned off the sheet, weighed by scanning A and B over a reload, poured, and undone from the history', async () => {
    const { page, trouble } = await visit(browser, served.url);
    page.setDefaultTimeout(20_000);
    const said = () => page.locator('main').innerText();
    const press = (name: string | RegExp) => page.getByRole('button', { name }).first().click();
    const card = () => page.getByRole('region', { name: 'The batch' }).innerText();

    await picturedOnFailure(page, 'mix-card', async () => {
      // The sheet: ratios that contradict each other are told in place, with both figures, and nothing is kept.
      await page.goto('/resin');
      await page.getByRole('link', { name: 'Quillow Deep' }).click();
      await page.getByRole('heading', { name: 'What the sheet says' }).waitFor();
      await awake(page);
      const massB = page.getByLabel('By mass, part B');
      await massB.fill('83');
      await expect.poll(said, SOON).toMatch(/By mass it says 100 to 83; volumes and densities make it 100 to 39\.9/);
      await press('Keep the sheet of Quillow Deep');
      await page.getByRole('alert').first().waitFor();
      await massB.fill('40');
      await page.getByLabel('Demould after, hours').fill('100');
      await press('Keep the sheet of Quillow Deep');
      await expect.poll(said, SOON).toContain('after 100 hours');

      // Which containers are open: the card of a lift that was poured says so.
      await page.goto('/jobs?all=1');
      await page.getByRole('link', { name: /Porthole tray/ }).click();
      await page.getByRole('link', { name: /^Tray/ }).click();
      await page.getByRole('link', { name: /^Lift 1/ }).click();
      await page.getByText('Lift 1 is poured').waitFor();
      const [a = '', b = ''] = [...(await card()).matchAll(/C-[0-9A-Z]{6}/g)].map(([code]) => code);

      // A pour of one lift, reckoned while it is typed.
      await page.goto('/jobs');
      await page.getByRole('link', { name: /Pond coffee table/ }).click();
      await page.waitForURL(/\/jobs\/\d+$/);
      await page.goto(`${page.url()}/pours/new`);
      await awake(page);
      await page.getByLabel('Name of the pour').fill('Rim');
      await page.getByRole('combobox', { name: 'Resin' }).selectOption({ label: 'Quillow Deep' });
      await page.getByText('A form', { exact: true }).click();
      await page.getByRole('textbox', { name: 'Length' }).fill('300 mm');
      await page.getByRole('textbox', { name: 'Width' }).fill('100 mm');
      await page.getByRole('textbox', { name: 'Depth' }).fill('20 mm');
      await expect.poll(said, SOON).toMatch(/Lift 1, 20 mm/);
      await expectAccessible(page);
      await press(/^Plan Rim for/);
      await page.getByRole('heading', { name: 'Rim', level: 1 }).waitFor();
      await expectNoSideways(page);

      // The card: A by a hand scanner, as much as it asks for.
      await page.getByRole('link', { name: 'Weigh out lift 1' }).click();
      await page.getByRole('button', { name: 'Scan part A' }).waitFor();
      await awake(page);
      await wedge(page, b.replace('-', ''));
      await page.getByText(/is part B\. Part A comes now/).waitFor();
      await wedge(page, a.replace('-', ''));
      await page.getByRole('button', { name: /g of part A are in/ }).waitFor();
      await expectAccessible(page);
      await press(/g of part A are in/);
      await page.getByRole('button', { name: 'Scan part B' }).waitFor();

      // The phone dies: what was weighed is there when the card is opened again.
      await page.reload();
      await page.getByRole('button', { name: 'Scan part B' }).waitFor();
      expect(await card()).toContain(a);
      await awake(page);
      await press('Scan part B');
      await press('Type it');
      await page.getByLabel(/The code, as printed/).fill(a.toLowerCase());
      await press('Look it up');
      await page.getByText(/gave part A of this batch/).waitFor();
      await page.getByLabel(/The code, as printed/).fill(b.toLowerCase());
      await press('Look it up');
      await page.getByRole('button', { name: /g of part B are in/ }).waitFor();
      await press(/g of part B are in/);
      await page.getByRole('timer').waitFor();
      expect(await card()).toMatch(/left of \d+ minutes/);
      await expectAccessible(page);
      await press('Lift 1 is poured');
      await page.getByLabel('Humidity, %').fill('45');
      await press('Lift 1 is poured');
      await page.getByRole('heading', { name: 'Lift 1 is poured' }).waitFor();

      // The history: a weighing is not undone under a lift that was poured; the pouring is, and then the weighing.
      await page.getByRole('link', { name: 'Back to Rim' }).last().click();
      const history = page.getByRole('list', { name: 'History' });
      const undo = async (nr: number) => {
        await awake(page);
        await history
          .getByRole('button', { name: /^Reverse/ })
          .nth(nr)
          .click();
        await page.getByLabel('Why is it reversed?').fill('Wrong jug');
        await press('Reverse it');
      };
      await expect.poll(() => history.innerText(), SOON).toContain('Poured Rim, lift 1');
      const struck = () => history.locator('del').count();
      const before = await struck();
      await undo(1);
      await page.getByText(/was poured with it since/).waitFor();
      await page.reload();
      await undo(0);
      await expect.poll(struck, SOON).toBe(before + 1);
      await page.reload();
      await undo(0);
      await expect.poll(struck, SOON).toBe(before + 2);
      await page.goto(`${page.url()}/lifts/1`);
      await page.getByRole('button', { name: 'Scan part B' }).waitFor();
      expect(await card()).not.toContain(b);
    });
    expect(trouble).toEqual([]);
    expect(await proved(served)).toMatch(/every rule holds/);
  });
});
