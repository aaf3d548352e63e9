import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSideways, openBrowser, picturedOnFailure, visit } from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';
import { addClientJob, inDays } from './journey';

/** Slower than a hand scanner, as fast as a hand. */
const BY_HAND = { delay: 100 };
const INSERTS = 'Threaded inserts M8, brass';

describe('needs and promises', () => {
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
  const card = (page: Page) => page.getByRole('article', { name: new RegExp(INSERTS) });

  /** A job that needs so many inserts, and its page of needs. */
  async function jobThatNeeds(page: Page, name: string, pieces: number): Promise<string> {
    await addClientJob(page, name, inDays(12));
    const id = /\/jobs\/(\d+)/.exec(page.url())?.[1] ?? (await idOf(page, name));
    await page.goto(`/jobs/${id}/needs`);
    await page.getByText('Nothing is on the list yet.').waitFor();
    const product = page.getByLabel('Product', { exact: true });
    // The page is awake once it says what it reads.
    await expect
      .poll(async () => {
        await product.selectOption({ label: INSERTS });
        return page.getByText('Pieces, for example 12.').isVisible();
      })
      .toBe(true);
    await page.getByLabel('How much').pressSequentially(String(pieces), BY_HAND);
    await page.getByText(`Reads as ${pieces} pieces.`).waitFor();
    await key(page, 'Add it to what is needed').click();
    await card(page).waitFor();
    return id;
  }

  async function idOf(page: Page, name: string): Promise<string> {
    await page.goto('/jobs');
    const href = await page
      .getByRole('link', { name: new RegExp(name) })
      .first()
      .getAttribute('href');
    return href?.split('/').at(-1) ?? '';
  }

  it('what is short is shown and bought, what is there is promised, another is told who and when, dropping frees', async () => {
    const { page, context, trouble } = await visit(browser, served.url);
    await picturedOnFailure(page, 'needs-and-promises', async () => {
      const first = await jobThatNeeds(page, 'Heron shelf', 90);
      const second = await jobThatNeeds(page, 'Plover shelf', 5);
      // Both see the same 70 pieces free: the other 30 are promised in the demo.
      await card(page).getByText('Have, free').waitFor();
      const other = await context.newPage();
      await other.goto(`/jobs/${second}/needs`);
      await key(other, 'Promise all that is free').waitFor();

      await page.goto(`/jobs/${first}/needs`);
      await card(page).getByText('20 pieces short').waitFor();
      await card(page)
        .getByText(/Buy 1 × 100 pieces of Threaded inserts/)
        .waitFor();
      await expectAccessible(page);
      await expectNoSideways(page);
      // 5 of the 70 are kept for the other job, which was not promised them yet.
      await page.getByRole('img', { name: /65 pieces can be promised today/ }).waitFor();
      await page.waitForTimeout(1500);
      await key(page, 'Promise all that is free').click();
      await page.getByText(/1 thing is promised to Heron shelf/).waitFor();
      await card(page).getByText('Promised to this job').waitFor();

      // The other page still shows them free: who asked first has them.
      await other.waitForTimeout(1500);
      await key(other, 'Promise all that is free').click();
      await other.getByText(/is promised to another job: .*Nothing of it is free/).waitFor();
      await other.reload();
      await card(other).getByText('5 pieces short').waitFor();
      await card(other)
        .getByText(/70 pieces for Heron shelf/)
        .waitFor();

      // The stock page says so too, and what is short is on the list of what to buy.
      await card(page).getByRole('link', { name: /^C-/ }).click();
      await page.getByRole('list', { name: 'Promised to' }).getByText('Heron shelf').waitFor();
      await page.getByText('None of it is free.').waitFor();
      await page.goto('/on-hand/buy');
      const line = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: INSERTS }) });
      await line.getByText('25 pieces short.').waitFor();
      await line.getByRole('link', { name: 'Plover shelf' }).waitFor();

      // The first comes to nothing: what it had is free again.
      await page.goto(`/jobs/${first}/needs`);
      await page.waitForTimeout(1500);
      await key(page, 'Free everything it is promised').click();
      await page.getByText('It is free for others again.').waitFor();
      await other.reload();
      await card(other).getByText('Have, free').waitFor();
      await other.waitForTimeout(1500);
      await key(other, 'Promise all that is free').click();
      await other.getByText(/1 thing is promised to Plover shelf. Nothing is missing./).waitFor();
    });
    // A refused press is said on the page and is no trouble.
    expect(trouble).toEqual([]);
    expect(await proved(served)).toContain('every rule holds');
    await context.close();
  });
});
