import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sayDate } from '@/shared/calendar/say-date';
import {
  DESK,
  expectAccessible,
  expectNoSideways,
  openBrowser,
  PHONE,
  picturedOnFailure,
  visit,
} from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';
import { addClientJob, beginBook, inDays, TODAY } from './journey';

/** Keys that come before a page is awake are lost on it. */
const AWAKE_MS = 1500;

describe('a job and its time line', () => {
  let served: Served;
  let browser: Browser;

  beforeAll(async () => {
    served = await serve();
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  const key = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
  const steps = (page: Page) => page.getByRole('list', { name: 'Steps of the job' });
  /** The row of one step: its name stands after its verdict. */
  const stepOf = (page: Page, name: string) =>
    steps(page)
      .locator('> li')
      .filter({ has: page.getByText(new RegExp(`^(Fits|Care|Stop|Done): ${name}$`)) });
  const open = async (page: Page, title: string, from = page.locator('main')) => {
    await from.getByText(title, { exact: true }).first().click();
  };

  async function addStep(page: Page, kind: string, name: string, on: string) {
    await open(page, 'Add a step');
    await page.getByLabel('What is done').selectOption(kind);
    await page.getByLabel('What you call it').fill(name);
    await page.getByLabel('Day of the step').fill(on);
    await key(page, new RegExp(`^Plan ${name}$`, 'i')).click();
    await stepOf(page, name).waitFor();
  }

  it('is planned on a phone, its order minded, its stage moved on, and a held step asks for a reason', async () => {
    const { page, context, trouble } = await visit(browser, served.url, { size: PHONE });
    await picturedOnFailure(page, 'plan-a-job', async () => {
      await beginBook(page);
      await addClientJob(page, 'River desk', inDays(60));
      await page.getByRole('heading', { name: 'River desk' }).waitFor();
      await page.waitForTimeout(AWAKE_MS);
      await addStep(page, 'wood-dry', 'Slab dry', inDays(10));
      await addStep(page, 'flatten', 'Flatten it', inDays(12));
      await addStep(page, 'delivery', 'Hand it over', inDays(40));
      expect(await steps(page).locator('> li').count()).toBe(3);
      await expectAccessible(page);
      await expectNoSideways(page);

      // Earlier than the wood is dry: said before anything is kept.
      const flatten = stepOf(page, 'Flatten it');
      await open(page, 'Move it, or say it is done', flatten);
      for (let presses = 0; presses < 3; presses += 1)
        await flatten.getByRole('button', { name: 'A day earlier' }).click();
      await flatten.getByText('Changed: was Fits, now Care').waitFor();
      await flatten.getByText(/only then the wood is dry/).waitFor();
      await page.getByText('One day is moved, not yet in the book.').waitFor();
      await expectAccessible(page);
      await key(page, 'Leave them').click();
      await flatten.getByText('Changed: was Fits, now Care').waitFor({ state: 'detached' });

      await key(page, 'Making begins').click();
      await page.locator('li[aria-current="step"]').filter({ hasText: 'Making' }).waitFor();
      expect(trouble).toEqual([]);
    });
    await context.close();
    expect(await proved(served)).toBeTruthy();
  });

  it('is moved by keyboard alone on a wide screen, what waits for it pushed along, and kept', async () => {
    const { page, context, trouble } = await visit(browser, served.url, { size: DESK });
    await picturedOnFailure(page, 'move-by-keyboard', async () => {
      await page.goto('/jobs', { waitUntil: 'networkidle' });
      await page.getByRole('link', { name: /River desk/ }).click();
      await page.getByRole('heading', { name: 'River desk' }).waitFor();
      await page.waitForTimeout(AWAKE_MS);
      const dry = key(page, /^Slab dry, /);
      await dry.focus();
      for (let presses = 0; presses < 5; presses += 1) {
        await page.keyboard.press('ArrowRight');
        await page.waitForTimeout(90);
      }
      // The mark that moved still has the focus, and the flattening went along.
      expect(await dry.evaluate((element) => element === document.activeElement)).toBe(true);
      await page.getByText('2 days are moved, not yet in the book.').waitFor();
      await page.getByText('No verdict changes.').waitFor();
      await key(page, 'Keep the new days').click();
      await page.getByText('not yet in the book').waitFor({ state: 'detached' });
      const say = (days: number) => sayDate(inDays(days), { order: 'day-first', today: TODAY });
      const said = async () => (await steps(page).innerText()).replaceAll(/\s+/g, ' ');
      await expect.poll(said).toContain(say(15));
      expect(await said()).not.toContain(say(12));
      await page.reload({ waitUntil: 'networkidle' });
      expect(await said()).toContain(say(15));
      expect(trouble).toEqual([]);
    });
    await context.close();
    expect(await proved(served)).toBeTruthy();
  });

  it('is held by the cure: worked on before it leaves the form only with a reason that stays in the history', async () => {
    const { page, context, trouble } = await visit(browser, served.url, { size: PHONE });
    await picturedOnFailure(page, 'cure-hold', async () => {
      await page.goto('/jobs', { waitUntil: 'networkidle' });
      await page.getByRole('link', { name: /River desk/ }).click();
      await page.waitForTimeout(AWAKE_MS);
      // A lift and the day it leaves the form, next week: until it is poured, whatever would be done to it is held.
      await addStep(page, 'lift', 'Clear lift', inDays(3));
      await addStep(page, 'demould', 'Out of the form', inDays(7));
      const flatten = stepOf(page, 'Flatten it');
      await open(page, 'Move it, or say it is done', flatten);
      await flatten.getByText(/Clear lift is not poured, so nothing of it cures yet/).waitFor();
      await key(page, 'Flatten it is done all the same').click();
      await flatten.getByText('Write why, in a few words: it stays in the history.').waitFor();
      expect(await flatten.getByText('Done', { exact: true }).count()).toBe(0);
      await flatten
        .getByLabel('Why it goes on all the same')
        .pressSequentially('Only the base is planed.', { delay: 90 });
      await key(page, 'Flatten it is done all the same').click();
      await flatten.getByText('Done', { exact: true }).waitFor();
      await page
        .getByText(/Only the base is planed\./)
        .first()
        .waitFor();
      await expectAccessible(page);
      await expectNoSideways(page);
      expect(trouble).toEqual([]);
    });
    await context.close();
    expect(await proved(served)).toBeTruthy();
  });
});
