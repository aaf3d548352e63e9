import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSideways, openBrowser, visit, wedge } from '@/tests/support/browser';
import { type Served, serve } from '@/tests/support/serve';

/** A label that our labels' check character lets through, of no book: the first that is ever minted. */
const LABEL = 'C4V9TN3';
/** Keys that come before a page is awake are refused as half a code. */
const AWAKE_MS = 1000;
const LONG = 'Overlongname'.repeat(10);

describe('what somebody typed', () => {
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

  async function openCard(page: Page) {
    await page.goto('/arrive');
    await key(page, 'It has no code').click();
    await page.getByRole('list', { name: 'Products' }).getByRole('button').first().click();
    await key(page, /^Into the book/).waitFor();
  }

  it('stays on the page when something is scanned, until somebody says to open it', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/jobs/new', { waitUntil: 'networkidle' });
    const name = page.getByLabel('Name', { exact: true });
    // What is typed before the page is awake is not yet known to it.
    await page.waitForTimeout(AWAKE_MS);
    await name.fill('Oak desk');
    await page.waitForTimeout(AWAKE_MS);
    await page.getByRole('heading', { name: 'Add a job' }).click();
    await wedge(page, LABEL);
    await page.getByText('Scanned C-4V9TN3.').waitFor();
    expect(page.url()).toMatch(/\/jobs\/new$/);
    await expectAccessible(page);
    await key(page, 'Go on here').click();
    expect(await name.inputValue()).toBe('Oak desk');

    await page.waitForTimeout(AWAKE_MS);
    await wedge(page, LABEL);
    await key(page, 'Open it').click();
    await page.waitForURL('**/scan?**');

    // Where nothing was typed there is nothing to ask.
    await page.goto('/jobs/new');
    await page.waitForTimeout(AWAKE_MS);
    await page.getByRole('heading', { name: 'Add a job' }).click();
    await wedge(page, LABEL);
    await page.waitForURL('**/scan?**');
    await context.close();
  });

  it('is a date typed key by key on the arrival card, and what it can mean is still asked beside the error', async () => {
    const { page, context } = await visit(browser, served.url);
    await openCard(page);
    await page.waitForTimeout(AWAKE_MS);
    const useBy = page.getByLabel(/^Use by/);
    await useBy.click();
    // As fingers type: a hand scanner is quicker, and would be taken for one.
    await page.keyboard.type('12 Mar 2027', { delay: 70 });
    expect(await useBy.inputValue()).toBe('12 Mar 2027');
    const madeOn = page.getByLabel(/^Made on/);
    await madeOn.click();
    await page.keyboard.type('1/7/2026', { delay: 70 });
    await key(page, /^Into the book/).click();
    await page.getByText('This can mean more than one date. Choose which.').first().waitFor();
    await key(page, '1 Jul 2026').first().click();
    expect(await madeOn.inputValue()).toBe('1 Jul 2026');
    expect(await useBy.inputValue()).toBe('12 Mar 2027');
    await context.close();
  });

  it('on the arrival card comes back after another page, its new place too, and goes into the book in one press', async () => {
    const { page, context } = await visit(browser, served.url);
    await openCard(page);
    await page.getByLabel('Where it goes').selectOption({ label: 'A new place…' });
    await page.getByLabel('Name the new place').fill('Cabinet nine');
    await page.goto('/jobs');
    await page.goBack();
    await key(page, /^Go on with /).click();
    await key(page, 'Into the book, Cabinet nine (new)').click();
    await page.getByText('It is in the book, Cabinet nine.').waitFor();
    await page.goto('/arrive');
    await page.waitForTimeout(AWAKE_MS);
    expect(await key(page, /^Go on with /).count()).toBe(0);

    // A place that is refused books nothing, and the words stand beside its field.
    await openCard(page);
    await page.getByLabel('Where it goes').selectOption({ label: 'A new place…' });
    await page.getByLabel('Name the new place').fill('Cabinet nine');
    await key(page, 'Into the book, Cabinet nine (new)').click();
    await page.getByText('There is already one called Cabinet nine.').waitFor();
    expect(await page.getByLabel('Name the new place').getAttribute('aria-invalid')).toBe('true');
    await context.close();
  });

  it('of a part-used container is asked for its opening day before it goes in', async () => {
    const { page, context } = await visit(browser, served.url);
    await openCard(page);
    await page.getByText('Opened or part-used already').click();
    await page.getByText('No, opened').click();
    await key(page, /^Into the book/).click();
    await page.getByText('Give the day it was opened').first().waitFor();
    await page.getByLabel('Opened on').fill('Sep 2025');
    await page.getByText('Goes into the book as 1 Sep 2025').waitFor();
    await key(page, /^Into the book/).click();
    await page.getByText(/^It is in the book/).waitFor();
    await context.close();
  });

  it('of a new product stays when something else is scanned, which waits beside it', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/arrive');
    await page.waitForTimeout(AWAKE_MS);
    await wedge(page, '09521234500001');
    await key(page, 'A product new to the book').click();
    const name = page.getByLabel('What it is called');
    await name.fill('Shellac flakes');
    await page.getByRole('heading', { level: 1 }).click();
    await page.waitForTimeout(AWAKE_MS);
    await wedge(page, LABEL);
    await page.getByText('This form is as it was.').waitFor();
    expect(await name.inputValue()).toBe('Shellac flakes');
    await expectAccessible(page);
    await key(page, 'Go on with this form').click();
    expect(await name.inputValue()).toBe('Shellac flakes');
    await context.close();
  });

  it('or scanned stays where the next part of the page does not come, which one press fetches again', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/arrive', { waitUntil: 'networkidle' });
    await page.route(/\.js(\?|$)/, (route) => route.abort());
    await page.waitForTimeout(AWAKE_MS);
    await wedge(page, '09521234500001');
    await page.getByText('The next part of this page could not be fetched.').waitFor();
    await page.getByText('What was scanned is kept here.').waitFor();
    await expectAccessible(page);
    await page.unroute(/\.js(\?|$)/);
    await key(page, 'Try again').click();
    await key(page, 'A product new to the book').waitFor();
    await page.getByText('09521234500001').waitFor();
    await context.close();
  });

  it('of wood is in the form again after a reload', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/arrive/wood');
    await page.getByLabel('Species').fill('Walnut');
    await page.getByLabel('Length', { exact: true }).fill('2400 mm');
    await page.reload();
    await page.getByText('What you typed here before is kept.').waitFor();
    expect(await page.getByLabel('Length', { exact: true }).inputValue()).toBe('2400 mm');
    await key(page, 'Begin afresh').click();
    expect(await page.getByLabel('Length', { exact: true }).inputValue()).toBe('');
    await context.close();
  });

  it('as a code that does not read is put right where it is wrong', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/scan?code=09521234543214');
    await key(page, 'Correct it').click();
    const field = page.getByLabel(/The code, as printed/);
    expect(await field.inputValue()).toBe('09521234543214');
    expect(await field.evaluate((input: HTMLInputElement) => input.selectionStart)).toBe(13);
    await field.press('3');
    await key(page, 'Look it up').click();
    await page.waitForURL('**/scan?code=09521234543213');
    await context.close();
  });

  it('as a long name without a space widens no page, and at twice the text size every place is still named', async () => {
    const { page, context } = await visit(browser, served.url);
    await page.goto('/jobs/new');
    await page.getByLabel('Name', { exact: true }).fill(LONG);
    await page.getByLabel('Day of use').fill('2099-12-12');
    await key(page, new RegExp(`^Add ${LONG}`)).click();
    await page.getByRole('heading', { name: LONG }).waitFor();
    await expectNoSideways(page);
    await page.goto('/jobs');
    await expectNoSideways(page);
    await page.addStyleTag({ content: 'html { font-size: 200% }' });
    for (const name of ['Arrive', 'On hand', 'Pull', 'Jobs', 'Watch']) {
      const box = await page.getByRole('navigation').getByRole('link', { name, exact: true }).boundingBox();
      expect(box && box.x >= 0 && box.x + box.width <= 390 && box.y + box.height <= 844, name).toBe(true);
    }
    await context.close();
  });
});
