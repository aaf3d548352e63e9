import type { Browser } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSideways, openBrowser, visit } from '@/tests/support/browser';
import { type Served, serve } from '@/tests/support/serve';

describe('which slabs make this top', () => {
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

  it('is asked on one screen and answered with drawings, in one piece, as a pair and with a river', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/on-hand/fits');
    await page.getByLabel('Length', { exact: true }).fill('1500');
    await page.getByLabel('Width', { exact: true }).fill('600');
    await page.getByRole('button', { name: 'See what fits' }).click();
    await page.getByText(/pieces were looked at: \d+ fit/).waitFor();
    const answers = page.getByRole('list', { name: 'What it can be cut from' }).getByRole('listitem');
    expect(await answers.first().getByRole('img').count()).toBe(1);
    await expectAccessible(page);
    await expectNoSideways(page);

    // The question is still there; only what it is made of changes.
    await page.getByText('Change the question', { exact: true }).click();
    expect(await page.getByLabel('Length', { exact: true }).inputValue()).toBe('1500');
    await page.getByText('Bookmatched pair', { exact: true }).click();
    await page.getByRole('button', { name: 'See what fits' }).click();
    await page.getByText(/pairings? (was|were) looked at/).waitFor();
    await page.getByText('Sisters from one log').first().waitFor();

    await page.getByText('Change the question', { exact: true }).click();
    await page.getByText('Two, a river between', { exact: true }).click();
    await page.getByRole('button', { name: 'See what fits' }).click();
    await page.getByText('A river needs a finished thickness').first().waitFor();
    await page.getByLabel('Thickness').fill('40');
    await page.getByRole('button', { name: 'See what fits' }).click();
    await page
      .getByText(/of resin as deep as the top/)
      .first()
      .waitFor();
    // There are more pairings than a page waits for: it says how far it is, and stops when it is told to.
    await page.getByRole('button', { name: 'Stop looking' }).click();
    await page.getByText('Stopped. What is shown is the largest pieces only.').waitFor();
    await expectAccessible(page);
    await expectNoSideways(page);
    await context.close();
  });
});
