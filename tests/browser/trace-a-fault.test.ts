import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSideways, openBrowser, picturedOnFailure, visit } from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';

/** A page is awake when its scripts listen; what is typed before is lost. */
const awake = (page: Page) => page.waitForLoadState('networkidle').then(() => page.waitForTimeout(1000));

const SOON = { timeout: 15_000 };

describe('a soft spot, from the job to the last released tin', () => {
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

  it('is written down, traced to its lots and every job of them, all that is left is held, told and released', async () => {
    const { page, trouble } = await visit(browser, served.url);
    page.setDefaultTimeout(20_000);
    const said = () => page.locator('main').innerText();
    const press = (name: string | RegExp) => page.getByRole('button', { name }).first().click();

    await picturedOnFailure(page, 'trace-a-fault', async () => {
      await page.goto('/jobs');
      await page.getByRole('link', { name: /Pond coffee table/ }).click();
      await page.getByRole('link', { name: 'Write a fault down' }).click();
      await page.getByRole('heading', { name: 'Write a fault down' }).waitFor();
      await awake(page);
      // What is missing is told in place, and what was typed stays.
      await page.getByRole('textbox', { name: 'How deep' }).pressSequentially('1/32 in', { delay: 90 });
      await press('Write the fault down');
      await page.getByText('Say what is wrong.').first().waitFor();
      await page.getByText('Soft spot', { exact: true }).click();
      const lift = page.getByRole('combobox', { name: 'In which lift?' });
      const named = await lift.locator('option', { hasText: 'Pond, lift 1' }).first().textContent();
      await lift.selectOption({ label: named ?? '' });
      await page.getByRole('textbox', { name: 'What was seen' }).pressSequentially('Takes a nail', { delay: 90 });
      await expectAccessible(page);
      await press('Write the fault down');
      await page.waitForURL(/\/jobs\/\d+$/);
      await expect.poll(said, SOON).toMatch(/Pond, lift 1, .*deep/);

      // Its trace names both lots; followed into every job it names the other tables too.
      const fault = page
        .getByRole('list', { name: 'Faults' })
        .getByRole('listitem')
        .filter({ hasText: 'Takes a nail' });
      await fault.getByRole('link', { name: 'Trace it' }).click();
      await page.getByRole('heading', { name: 'The picture' }).waitFor();
      await expect.poll(() => page.getByRole('list', { name: 'Lots' }).getByRole('listitem').count(), SOON).toBe(2);
      await expect
        .poll(() => page.getByRole('list', { name: 'Clients to tell' }).innerText(), SOON)
        .toContain('Ines Calloway');
      expect(await page.getByRole('list', { name: 'Clients to tell' }).innerText()).not.toContain('Porthole tray');
      await page.getByRole('link', { name: 'Follow its lots into every job' }).click();
      await page.waitForURL(/all=yes/);
      await expect
        .poll(() => page.getByRole('list', { name: 'Clients to tell' }).innerText(), SOON)
        .toContain('Porthole tray');
      await expectAccessible(page);
      await expectNoSideways(page);

      // One press holds all that is left: not without a reason, and then each is named.
      await awake(page);
      const keep = page.getByRole('button', { name: /^Put all \d+ on hold$/ });
      const count = Number(/\d+/.exec((await keep.textContent()) ?? '')?.[0]);
      expect(count).toBeGreaterThan(1);
      await keep.click();
      await page
        .getByText(/This needs a reason/)
        .first()
        .waitFor();
      await page.getByLabel('Why are they held?').pressSequentially('Soft after a week', { delay: 90 });
      await keep.click();
      await page.getByText('Everything that is left is set apart already.').waitFor();
      const held = page.getByRole('list', { name: /^On hold by entry/ });
      await expect.poll(() => held.getByRole('listitem').count(), SOON).toBe(count);
      // The lots are among them, and what comes in of one later waits with it.
      const lots = held.getByRole('link', { name: /^Lot / });
      expect(await lots.count()).toBe(2);
      await expect.poll(said, SOON).toContain('What comes in of these lots waits with them');
      const lotHref = (await lots.first().getAttribute('href')) ?? '';
      const tin = held.getByRole('link', { name: /^[CSBF]-/ }).first();
      const label = (await tin.textContent())?.trim() ?? '';
      await tin.click();
      await page.waitForURL(/\/(containers|pieces)\//);
      await expect.poll(said, SOON).toMatch(/Put all that is left of a fault: soft spot on hold: Soft after a week/i);

      await page.goto(lotHref);
      await page.getByRole('heading', { name: 'On hold by a trace' }).waitFor();
      await expect.poll(said, SOON).toMatch(/The whole lot\s+On hold: Soft after a week/);
      await page.goBack();

      // The client's list can be copied, and the release is a decision with its reason.
      await page.goBack();
      await page.getByRole('heading', { name: 'The picture' }).waitFor();
      await awake(page);
      await press('Copy the list');
      await expect
        .poll(
          async () =>
            (await page.getByLabel('The list, to be copied').count()) > 0 ||
            (await page.getByText('Copied. Paste it into your message.').count()) > 0,
          SOON,
        )
        .toBe(true);
      await page.locator('summary', { hasText: `Release all ${count}` }).click();
      await press(`Release all ${count}`);
      await page
        .getByText(/A release is a decision/)
        .first()
        .waitFor();
      await page.getByLabel('Why may it be used again?').pressSequentially('The test pour is hard', { delay: 90 });
      await press(`Release all ${count}`);
      await page.getByRole('button', { name: `Put all ${count} on hold` }).waitFor();
      await page.goto(`${label.startsWith('C') ? '/containers' : '/pieces'}/${label.replace('-', '')}`);
      await expect.poll(said, SOON).toMatch(/The test pour is hard/);
    });
    expect(trouble).toEqual([]);
    expect(await proved(served)).toMatch(/every rule holds/);
  });
});
