import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSideways, openBrowser, visit } from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';

/** Along, left, right in millimetres; the third left side is a slip for 360. */
const STATIONS = [
  ['0', '300', '310'],
  ['600', '350', '340'],
  ['1200', '36', '352'],
  ['1800', '350', '340'],
  ['2400', '280', '300'],
] as const;
/** As somebody types: keys that come faster are a scanner's. */
const KEY_MS = 60;

describe('a slab on the trestles', () => {
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

  const field = (page: Page, station: number, value: string) => page.getByLabel(`Station ${station}, ${value}`);
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

  it('is measured and marked on a phone by keyboard alone, what is wrong pointed at, and nothing typed is lost', async () => {
    const { page, context, trouble } = await visit(browser, served.url);
    await page.goto('/on-hand?show=wood&q=walnut', { waitUntil: 'networkidle' });
    const slab = await page.locator('a[href^="/pieces/S"]').first().getAttribute('href');
    await page.goto(`${slab}/measure`, { waitUntil: 'networkidle' });

    await press(page, 'Start with empty rows');
    await field(page, 1, 'along the line').focus();
    for (const value of STATIONS.flat()) {
      await page.keyboard.type(value, { delay: KEY_MS });
      await page.keyboard.press('Enter');
    }
    // The next station is offered at once, and the value that looks like a slip is pointed at.
    expect(await field(page, 6, 'along the line').evaluate((input) => input === document.activeElement)).toBe(true);
    await page.getByText('The left side looks far off its neighbours. Measure it once more.').waitFor();
    await expectAccessible(page);
    await expectNoSideways(page);
    await field(page, 3, 'to the left edge').fill('360');

    await field(page, 4, 'along the line').fill('1100');
    await press(page, 'Outline into the book');
    await page.getByText('Nothing was written').waitFor();
    const wrong = field(page, 4, 'along the line');
    await expect.poll(() => wrong.evaluate((input) => input === document.activeElement)).toBe(true);
    expect(await wrong.getAttribute('aria-invalid')).toBe('true');
    await page.getByText('This station lies before the one above it.').first().waitFor();
    await expectAccessible(page);

    await page.reload({ waitUntil: 'networkidle' });
    expect(await wrong.inputValue()).toBe('1100');
    expect(await field(page, 3, 'to the left edge').inputValue()).toBe('360');
    await wrong.fill('1800');
    const why = page.getByLabel('Why it is measured again');
    if (await why.isVisible()) await why.fill('The first tape had stretched');
    await press(page, 'Outline into the book');
    await page.waitForURL(`**${slab}`);
    await page.getByText('as measured down a chalk line on').waitFor();

    await page.getByRole('link', { name: /Mark what is wrong|Change its marks/ }).click();
    await page.waitForURL('**/marks');
    const where = page.getByLabel('Where', { exact: true });
    await where.fill('9000; 0');
    await page.getByLabel('How big across').fill('90');
    await page.getByText('None of it lies on the wood.').waitFor();
    await expectAccessible(page);
    await where.fill('900; -85');
    await page.getByLabel('How big across').press('Enter');
    await page.getByText('It is on the drawing.').waitFor();
    await page.getByText('90 mm across, 900 mm along, 85 mm right of the line; right through').waitFor();
    await press(page, 'Change: Knot, kept out, 90 mm across, 900 mm along, 85 mm right of the line; right through');
    await page.getByText('Fill it with resin').click();
    await press(page, 'Change the knot');
    await page.getByText('Knot, filled with resin').waitFor();
    await expectAccessible(page);

    for (const path of [slab ?? '', `${slab}/print`]) {
      await page.goto(path, { waitUntil: 'networkidle' });
      await page.getByText('Knot, filled with resin').first().waitFor();
      await expectAccessible(page);
      await expectNoSideways(page);
    }
    expect(trouble).toEqual([]);
    await context.close();
    expect(await proved(served)).toContain('every rule holds.');
  });

  it('prints on one page, whichever paper it is', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/on-hand?show=wood&q=walnut', { waitUntil: 'networkidle' });
    const slab = await page.locator('a[href^="/pieces/S"]').first().getAttribute('href');
    await page.goto(`${slab}/print`, { waitUntil: 'networkidle' });
    for (const format of ['A4', 'Letter']) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g), format).toHaveLength(1);
    }
    await context.close();
  });
});
