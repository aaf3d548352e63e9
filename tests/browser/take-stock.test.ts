import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  DESK,
  expectAccessible,
  expectNoSideways,
  openBrowser,
  picturedOnFailure,
  visit,
} from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';

/** Slower than a hand scanner, as fast as a hand. */
const BY_HAND = { delay: 95 };

describe('a stocktake on the phone', () => {
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

  const key = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
  const list = (page: Page, name: string) => page.getByRole('list', { name, exact: true }).getByRole('listitem');
  const typeCode = async (page: Page, code: string) => {
    const field = page.getByLabel(/The code, as printed/);
    await field.click();
    await page.keyboard.type(code, BY_HAND);
    await page.keyboard.press('Enter');
  };
  const labelIn = async (page: Page, name: string, nr: number) =>
    /[A-Z]-[0-9A-Z]{6}/.exec(await list(page, name).nth(nr).innerText())?.[0] ?? '';

  it('goes on where it was left, takes typed codes and weights, posts its differences, and is undone whole', async () => {
    const { page, context, trouble } = await visit(browser, served.url);
    await picturedOnFailure(page, 'take-stock', async () => {
      await page.goto('/stocktake', { waitUntil: 'networkidle' });
      await page.getByRole('link', { name: 'Cabinet 1' }).click();
      await page.getByRole('heading', { name: 'Cabinet 1', level: 1 }).waitFor();
      const missing = list(page, 'Not seen yet');
      const before = await missing.count();
      const differing = await list(page, 'More or less in it').count();
      const codes = await list(page, 'Codes that mean no thing here').count();
      expect(before).toBeGreaterThan(2);
      const first = await labelIn(page, 'Not seen yet', 0);
      const second = await labelIn(page, 'Not seen yet', 1);
      await page.waitForTimeout(1500);
      await key(page, 'Type it').click();

      await typeCode(page, first.toLowerCase());
      await page.getByText('As the book has it. Seen by Maker.').first().waitFor();
      await expect.poll(() => missing.count()).toBe(before - 1);

      await typeCode(page, second);
      const notFull = page.getByText('Not full?');
      // The answer before this one looks alike: its label is what tells them apart.
      await page.locator('p:not([role])', { hasText: second }).waitFor();
      await expect.poll(() => missing.count()).toBe(before - 2);
      if (await notFull.isVisible()) await notFull.click();
      const chips = page.getByText('What is left in it', { exact: true });
      if (await chips.isVisible()) await chips.click();
      await key(page, 'Note what is in it').click();
      await page.getByText('Type what is in it, with its unit; 0 when it is empty.').first().waitFor();
      await page.getByRole('textbox', { name: 'Left in it' }).fill('123 g');
      await key(page, 'Note what is in it').click();
      await page
        .getByText(/^123 g in it; the book has/)
        .first()
        .waitFor();
      await expect.poll(() => list(page, 'More or less in it').count()).toBe(differing + 1);

      await typeCode(page, 'LOOSE-LID-3');
      await page.getByText('Kept: LOOSE-LID-3').waitFor();
      await expect.poll(() => list(page, 'Codes that mean no thing here').count()).toBe(codes + 1);
      await expectAccessible(page);
      await expectNoSideways(page);

      // Somebody else walks the same place on another screen, and sees it all.
      const other = await visit(browser, served.url, { size: DESK });
      await other.page.goto(page.url(), { waitUntil: 'networkidle' });
      expect(await list(other.page, 'Not seen yet').count()).toBe(before - 2);
      await other.context.close();

      await page.getByRole('link', { name: 'Compare and post' }).click();
      await page.getByRole('heading', { name: 'Compare Cabinet 1', level: 1 }).waitFor();
      await expect.poll(() => page.title()).toMatch(/^Compare and post/);
      await page.waitForTimeout(1500);
      await expectAccessible(page);
      await list(page, 'Nobody saw it').first().getByText('Write it off', { exact: true }).click();
      const post = key(page, /^Post \d+ differences, in one entry$/);
      const acts = Number(/\d+/.exec(await post.innerText())?.[0]);
      expect(acts).toBeGreaterThan(1);
      await post.click();
      await page.getByText('This needs a reason.').first().waitFor();
      expect(page.url()).toContain('/finish');
      await page.getByLabel('Reason').fill('Used up on samples.');
      await post.click();
      await page.getByText('Reason: Used up on samples.').waitFor();
      expect(await list(page, 'Posted').count()).toBe(acts);
      // The title of a page comes a moment after the page itself.
      await expect.poll(() => page.title()).toMatch(/^Stocktake of Cabinet 1/);
      expect(await list(page, 'Left as the book has it').count()).toBeGreaterThanOrEqual(before - 3);
      await expectAccessible(page);
      await expectNoSideways(page);

      await page.waitForTimeout(1000);
      await key(page, /^Reverse/).click();
      await page.getByLabel('Why is it reversed?').fill('The wrong cabinet.');
      await key(page, 'Reverse it').click();
      await page.getByRole('link', { name: 'Compare and post' }).waitFor();
      expect(trouble).toEqual([]);
    });
    await context.close();
    expect(await proved(served)).toBeTruthy();
  });

  it('gives the calendar to whoever has its address, and to nobody once it is renewed', async () => {
    const { page, context, trouble } = await visit(browser, served.url);
    await page.goto('/settings', { waitUntil: 'networkidle' });
    await key(page, 'Make the calendar’s address').click();
    const field = page.getByLabel('The calendar’s address');
    await expect.poll(() => field.inputValue()).toMatch(/\/feed\/[\w-]{43}\.ics$/);
    const address = await field.inputValue();
    const given = await page.request.get(address);
    expect(given.status()).toBe(200);
    expect(given.headers()['content-type']).toBe('text/calendar; charset=utf-8');
    expect(await given.text()).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*BEGIN:VEVENT/);
    await key(page, 'Renew it').click();
    await key(page, 'Yes, make it another address').click();
    await expect.poll(() => field.inputValue()).not.toBe(address);
    expect((await page.request.get(address)).status()).toBe(404);
    await expectAccessible(page);
    expect(trouble).toEqual([]);
    await context.close();
  });

  it('rings once on this device for what is new in Watch, where the browser allows it, and says where it does not', async () => {
    const refused = await visit(browser, served.url);
    await refused.page.goto('/settings', { waitUntil: 'networkidle' });
    await refused.page.getByText(/^The browser was told not to let this page ring/).waitFor();
    expect(await key(refused.page, /bell/).count()).toBe(0);
    await refused.context.close();

    const { page, context, trouble } = await visit(browser, served.url);
    await context.grantPermissions(['notifications'], { origin: served.url });
    await page.goto('/watch', { waitUntil: 'networkidle' });
    await key(page, 'Turn the bell on, on this device').click();
    await page.getByText('The bell is on, on this device.').waitFor();
    const shown = () =>
      page.evaluate(async () => {
        const worker = await navigator.serviceWorker.getRegistration('/');
        return ((await worker?.getNotifications()) ?? []).map(({ title }) => title);
      });
    await expect.poll(shown).toEqual(['The bell rings here']);
    // One line becomes new to this device, as if it had come meanwhile; any other page of the book rings for it.
    await page.evaluate(() => {
      const kept = JSON.parse(localStorage.getItem('flitchbook.bell.lines') ?? '{}');
      delete kept[Object.keys(kept)[0] ?? ''];
      localStorage.setItem('flitchbook.bell.lines', JSON.stringify(kept));
    });
    await page.goto('/places', { waitUntil: 'networkidle' });
    await expect.poll(shown).toEqual(['One thing needs you']);
    await page.goto('/watch', { waitUntil: 'networkidle' });
    await key(page, 'Turn the bell off').click();
    await page.getByText('The bell is off.').waitFor();
    await expect
      .poll(() => page.evaluate(() => navigator.serviceWorker.getRegistration('/').then(Boolean)))
      .toBe(false);
    expect(trouble).toEqual([]);
    await context.close();
  });
});
