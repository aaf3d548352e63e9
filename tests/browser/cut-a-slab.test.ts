import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, expectNoSideways, openBrowser, picturedOnFailure, visit } from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';

describe('a slab cut in three on a phone', () => {
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
  const piece = (page: Page, nr: number) => page.locator('ol > li').nth(nr - 1);

  it('is drawn, cut, one piece scrapped, and made whole again', async () => {
    const { page, context, trouble } = await visit(browser, served.url);
    await picturedOnFailure(page, 'cut-a-slab', async () => {
      await page.goto('/on-hand?show=wood');
      const href = await page.locator('a[href^="/pieces/S"]').first().getAttribute('href');
      await page.goto(href ?? '');
      await page.getByRole('link', { name: 'Cut it' }).click();
      await page.waitForURL('**/cut');

      // The first line is typed, the second tapped.
      await page.getByLabel('How far').fill('800');
      await piece(page, 2).waitFor();
      await key(page, 'Add a cut').click();
      const wood = page.locator('svg rect[fill="transparent"]');
      await wood.scrollIntoViewIfNeeded();
      const box = await wood.boundingBox();
      await page.mouse.click((box?.x ?? 0) + (box?.width ?? 0) * 0.6, (box?.y ?? 0) + (box?.height ?? 0) / 2);
      await piece(page, 3).waitFor();
      await piece(page, 3).getByText('Scrap', { exact: true }).click();
      await key(page, 'Cut it into 3 pieces, 1 to scrap').waitFor();
      await expectAccessible(page);
      await expectNoSideways(page);

      // What was typed and tapped outlives a reload.
      await page.reload();
      await key(page, /^Cut it into 3 pieces/).waitFor();
      await piece(page, 3).getByText('Scrap', { exact: true }).click();
      await key(page, 'Cut it into 3 pieces, 1 to scrap').click();
      await page.getByRole('heading', { name: '2 pieces were kept' }).waitFor();
      await expectAccessible(page);
      const labels = page.getByRole('link', { name: 'Print their 2 labels' });
      expect(await labels.getAttribute('href')).toMatch(/codes=[A-Z0-9]{7},[A-Z0-9]{7}$/);

      await page.goto(href ?? '');
      await page.getByRole('heading', { name: 'Its family' }).waitFor();
      await page.getByText(/Cut into 3, 1 to scrap/).waitFor();
      await expectAccessible(page);
      await expectNoSideways(page);

      await page.goto(`${href}/cut`);
      await key(page, 'Undo the cut').click();
      await page.getByLabel('Why is it undone?').fill('Wrong slab');
      await key(page, 'Make it whole again').click();
      await page.getByRole('heading', { name: 'Cut it', exact: true }).waitFor();
      expect(await proved(served)).toContain('every rule holds');
    });
    expect(trouble).toEqual([]);
    await context.close();
  });
});
