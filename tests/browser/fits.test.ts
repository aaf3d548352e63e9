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

  it('is asked on one screen and answered with drawings, in one piece, as a pair and with a river, which is poured', async () => {
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

    // The river of an answer becomes a pour: a job is chosen, its slabs are promised on a press, and it is kept with it.
    const free = answers.filter({ hasText: 'free' }).filter({ has: page.getByRole('link', { name: 'Plan its pour' }) });
    await free.first().getByRole('link', { name: 'Plan its pour' }).click();
    await page.getByRole('heading', { name: 'Which job is it poured for?' }).waitFor();
    await page.getByRole('img', { name: /The finished top, to scale/ }).waitFor();
    await expectAccessible(page);
    await expectNoSideways(page);
    await page.getByRole('link', { name: /Library river desk/ }).click();
    await page.getByRole('button', { name: /^Promise (both|S-)/ }).click();
    await page.getByText('promised to Library river desk').first().waitFor();
    expect(await page.getByLabel('Depth of the river').inputValue()).toBe('40 mm');
    expect(Number(await page.getByLabel('Bare wood to seal, m²').inputValue())).toBeGreaterThan(0.1);
    await page.getByLabel('Name of the pour').fill('River of two banks');
    await page.getByLabel('Resin').selectOption({ label: 'Quillow Deep' });
    const reason = page.getByLabel('Why does it go beyond the sheet?');
    if ((await reason.count()) > 0) await reason.fill('Tried on a sample first');
    await expectAccessible(page);
    await expectNoSideways(page);
    await page.getByRole('button', { name: /^Plan River of two banks/ }).click();
    await page.getByRole('heading', { name: 'River of two banks' }).waitFor();
    await page.getByRole('img', { name: /The finished top, to scale/ }).waitFor();
    await page.getByText(/searched on/).waitFor();
    await expectAccessible(page);
    await expectNoSideways(page);
    await context.close();
  });
});
