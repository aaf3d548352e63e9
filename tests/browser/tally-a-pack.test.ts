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
import { beginBook } from './journey';

const LONG = 'Overlongname'.repeat(6);
/** Slower than a hand scanner, as fast as a hand. */
const BY_HAND = { delay: 100 };

describe('a pack of boards', () => {
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
  const tally = (page: Page) => page.getByRole('list', { name: 'Tally' }).getByRole('listitem');

  it('is tallied by keyboard, kept over a reload, and gives two boards out with labels', async () => {
    const { page, context, trouble } = await visit(browser, served.url);
    await picturedOnFailure(page, 'tally-a-pack', async () => {
      await beginBook(page);
      await page.goto('/arrive/wood');
      await page.getByText('Pack of boards', { exact: true }).click();
      await page.getByLabel('Species').fill(`Walnut ${LONG}`);
      await page.getByLabel('Sold as').selectOption('8');
      await page.getByText('Two sides (S2S)', { exact: true }).click();
      // The published thickness of 8/4 surfaced two sides is 1 3/4 in.
      expect(await page.getByLabel('Thickness', { exact: true }).inputValue()).toMatch(/^1 3\/4/);

      // Width, Enter, length, Enter; an empty length is the one before.
      await page.getByLabel('Width, mm').focus();
      for (const text of ['150', '2500', '200', '', '180', '3000']) {
        await page.keyboard.type(text, BY_HAND);
        await page.keyboard.press('Enter');
      }
      await page.getByText('3 boards, ').waitFor();
      expect(await tally(page).first().innerText()).toContain('3,000 mm');

      // Whole lines are pasted; the wrong one is marked and the others are kept.
      await page.getByText('Paste a written tally').click();
      await page.getByLabel('Lines').fill('160 x 2400 x 2\nthe short one\n140 x 2000');
      await key(page, 'Add these lines').click();
      await page.getByText('1 line is not read.').waitFor();
      expect(await tally(page).count()).toBe(7);
      await expectAccessible(page);
      await expectNoSideways(page);

      await page.waitForTimeout(1500);
      await page.reload();
      await page.getByText('What you typed here before is kept.').waitFor();
      expect(await tally(page).count()).toBe(7);
      await key(page, /^Into the book/).click();
      await page.getByText('Line 6 is not read. Put right what is marked, or remove it.').first().waitFor();
      await page.getByLabel('Width of board 6').fill('120');
      await page.getByLabel('Length of board 6').fill('1500');
      await key(page, /^Into the book/).click();
      await page.getByText(/^It is in the book/).waitFor();
      await page.getByRole('link', { name: 'Open its page' }).click();

      const boards = page.getByRole('list', { name: 'Tally of the pack' }).getByRole('checkbox');
      await boards.first().waitFor();
      expect(await boards.count()).toBe(7);
      await page.waitForTimeout(1500);
      await boards.nth(0).focus();
      await page.keyboard.press('Space');
      // A tick before the page is awake is one the page does not know of.
      await key(page, /^Take 1 board/).waitFor();
      await boards.nth(2).focus();
      // Two keys closer together than fingers can are a hand scanner's, and the page keeps them from the fields.
      await page.waitForTimeout(BY_HAND.delay);
      await page.keyboard.press('Space');
      await key(page, 'Take 2 boards out of the pack').click();
      await page.getByText('2 are boards of their own now:').waitFor();
      await page.getByText(/^5 of 7 boards are left/).waitFor();
      expect(await boards.nth(0).isDisabled()).toBe(true);
      await expectAccessible(page);
      await expectNoSideways(page);
      await page.getByRole('link', { name: 'Print their labels' }).click();
      await page.waitForURL(/\/labels\?codes=B\w{6},B\w{6}$/);
      expect(trouble).toEqual([]);
    });
    await context.close();
    expect(await proved(served)).toBeTruthy();
  });

  it('is in the list in words, the board that came out of it as a board, and both are found by the quarter', async () => {
    const { page, context } = await visit(browser, served.url, { size: DESK });
    await page.goto('/on-hand?show=wood&q=8/4 walnut', { waitUntil: 'networkidle' });
    const rows = page.getByRole('list', { name: 'Wood' }).getByRole('listitem');
    expect(await rows.count()).toBe(3);
    const pack = rows.filter({ hasText: '5 of 7 boards' });
    expect(await pack.count()).toBe(1);
    expect(await pack.getByRole('img').count()).toBe(0);
    await page.getByText('Narrow it down').click();
    await page.getByText('Boards', { exact: true }).click();
    await page.getByText('2 pieces').waitFor();
    await expectNoSideways(page);
    await context.close();
  });
});
