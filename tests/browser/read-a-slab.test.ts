import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSideways, openBrowser, picturedOnFailure, visit } from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';

/** Along, left, right in millimetres. */
const STATIONS = [
  ['0', '330', '320'],
  ['1500', '310', '330'],
  ['3000', '320', '350'],
] as const;
/** Where the drawing is tapped, as shares of it, and what the meter shows there. */
const ROUND = [
  [0.15, 0.65, '11.2'],
  [0.32, 0.35, '11.6'],
  [0.5, 0.65, '12.1'],
  [0.68, 0.35, '11.8'],
  [0.85, 0.65, '10.9'],
] as const;
/** As somebody types: keys that come faster are a scanner's. */
const KEY_MS = 60;

describe('a slab and a meter', () => {
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

  const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();

  it('is read five times by tapping it, corrected, set against its room, and forecast with an interval', async () => {
    const { page, context, trouble } = await visit(browser, served.url);
    page.setDefaultTimeout(20_000);
    const calm = async () => {
      // Written, the page is drawn anew, its title last.
      await page.waitForFunction(() => document.title !== '');
      await expectAccessible(page);
      await expectNoSideways(page);
    };
    await picturedOnFailure(page, 'read-a-slab', async () => {
      await page.goto('/on-hand?show=wood&q=walnut', { waitUntil: 'networkidle' });
      const slab = (await page.locator('a[href^="/pieces/S"]').nth(1).getAttribute('href')) ?? '';
      await measure(page, slab);

      // Tap, type, tap: a number and a tap are enough.
      await page.getByText('Read its moisture', { exact: true }).click();
      const wood = page.locator('form svg rect').first();
      for (const [across, down, shows] of ROUND) {
        await wood.scrollIntoViewIfNeeded();
        const box = await wood.boundingBox();
        if (!box) throw new Error('The slab is not drawn.');
        await page.mouse.click(box.x + box.width * across, box.y + box.height * down);
        await expect
          .poll(() => page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.value))
          .toBe('');
        await page.keyboard.type(shows, { delay: KEY_MS });
      }
      await page.getByText('Meter, wood temperature, day').click();
      await page.getByText('Pin meter', { exact: true }).first().click();
      await page.getByLabel('Temperature of the wood').fill('10 °C');
      await page.getByText('11.2 % is taken as 12.2 %').waitFor();
      await calm();

      // More water than walnut can hold is refused in place, and everything typed stays.
      await page.getByLabel('Reading 3, %').fill('180');
      await press(page, 'Write 5 readings');
      await page
        .getByText(/more water than this wood can hold/)
        .first()
        .waitFor();
      expect(await page.getByLabel('Reading 1, %').inputValue()).toBe('11.2');
      await page.getByLabel('Reading 3, %').fill('12.1');
      await press(page, 'Write 5 readings');
      await page.getByText('5 readings are in the book.').waitFor();
      // Corrected by one point, the raw figure kept beside it.
      await page.getByRole('cell', { name: '13.1 %' }).waitFor();
      await page.getByText('The meter showed 12.1 %, in wood of 10 °C').waitFor();
      await calm();

      // The air is noted once for the place, and counts for what stands in it.
      await page.locator('a[href^="/places/P"]').first().click();
      await page.waitForURL('**/places/P*');
      await page.getByText('Note the air today', { exact: true }).click();
      await page.getByLabel('Temperature, °C').first().fill('19');
      await page.getByLabel('Humidity, %').first().fill('38');
      await press(page, /^Write 19/);
      await page.getByText('The air is in the book.').waitFor();
      await calm();

      await page.goto(slab, { waitUntil: 'networkidle' });
      await page.locator('summary', { hasText: 'Drying' }).click();
      await page
        .getByText(/8 % about /)
        .first()
        .waitFor();
      await page
        .getByText(/Four times in five/)
        .first()
        .waitFor();
      await page.getByText('Read 5 times on').waitFor();
      await calm();
    });
    expect(trouble).toEqual([]);
    expect(await proved(served)).toContain('every rule holds');
    await context.close();
  });
});

async function measure(page: Page, slab: string) {
  await page.goto(`${slab}/measure`, { waitUntil: 'networkidle' });
  const empty = page.getByRole('button', { name: 'Start with empty rows' });
  if (await empty.isVisible()) await empty.click();
  for (const [at, [along, left, right]] of STATIONS.entries()) {
    const field = (value: string) => page.getByLabel(`Station ${at + 1}, ${value}`);
    await field('along the line').fill(along);
    await field('to the left edge').fill(left);
    await field('to the right edge').fill(right);
  }
  const why = page.getByLabel('Why it is measured again');
  if (await why.isVisible()) await why.fill('Measured with a longer tape');
  await page.getByRole('button', { name: 'Outline into the book' }).click();
  await page.waitForURL(`**${slab}`);
}
