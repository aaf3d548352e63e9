import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  expectAccessible,
  expectNoSideways,
  openBrowser,
  PHONE,
  picturedOnFailure,
  visit,
} from '@/tests/support/browser';
import { proved, type Served, serve } from '@/tests/support/serve';
import { type Camera, PHONE_CAMERA, photoOfSlab, SLAB, seenBy } from '@/tests/support/slab-photo';

const CAMERA: Camera = { ...PHONE_CAMERA, focal: 1200, width: 1600, down: 1200 };

describe('a slab measured from a photo, on a phone', () => {
  let served: Served;
  let browser: Browser;
  let file: string;

  beforeAll(async () => {
    served = await serve({}, 'scripts/demo.ts');
    browser = await openBrowser();
    file = path.join(os.tmpdir(), `flitchbook-slab-${process.pid}.jpg`);
    fs.writeFileSync(file, await photoOfSlab(CAMERA));
  });
  afterAll(async () => {
    fs.rmSync(file, { force: true });
    await browser?.close();
    await served?.stop();
  });

  const key = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

  /** Taps places of the slab on the whole photo, as it lies in its window. */
  async function tap(page: Page, places: readonly { x: number; y: number }[]) {
    const frame = page.getByRole('application');
    await frame.scrollIntoViewIfNeeded();
    const box = await frame.boundingBox();
    if (!box) throw new Error('There is no photo to tap on.');
    const scale = Math.min(box.width / CAMERA.width, box.height / CAMERA.down);
    for (const place of places) {
      const { x, y } = seenBy(CAMERA, place);
      await page.mouse.click(
        box.x + (box.width - CAMERA.width * scale) / 2 + x * scale,
        box.y + (box.height - CAMERA.down * scale) / 2 + y * scale,
      );
    }
  }

  it('has its marks refused in place, outlives a reload and a lost network, and lies under the drawing', async () => {
    const { page, context, trouble } = await visit(browser, served.url, { size: PHONE });
    await picturedOnFailure(page, 'slab-photo', async () => {
      await page.goto('/on-hand?show=wood');
      const piece = await page.locator('a[href^="/pieces/S"]').first().getAttribute('href');
      await page.goto(piece ?? '');
      await page.getByRole('link', { name: 'Measure from a photo' }).click();
      await page.waitForURL('**/photo');
      await expectAccessible(page);
      await key(page, 'Mark the corners').click();
      await page.getByText('Take or choose a photo first.').waitFor();
      await page.getByLabel('The photo').setInputFiles(file);
      await page.getByText('1600 × 1200 pixels').waitFor();
      await key(page, 'Mark the corners').click();

      const [a, b, c, d] = SLAB.sheet;
      await tap(page, [a, b, d, c]);
      await page.getByText('These marks are crossed.').waitFor();
      expect(await key(page, 'Go on to the edge').isDisabled()).toBe(true);
      await expectAccessible(page);
      await key(page, 'Undo').click();
      await key(page, 'Undo').click();
      await tap(page, [c, d]);
      await page.getByText('All four are marked.').waitFor();
      await key(page, 'Go on to the edge').click();

      // Up the wrong end first: the edge crosses itself, and what was tapped is taken back.
      await tap(
        page,
        [0, 6, 25, 19].map((nr) => SLAB.edge[nr] ?? a),
      );
      await page.getByText(/The outline crosses itself here/).waitFor();
      for (let presses = 0; presses < 4; presses += 1) await key(page, 'Undo').click();
      await tap(page, SLAB.edge);
      await page.getByText(/^About .+ long, .+ at its widest\.$/).waitFor();

      await page.reload();
      await page.getByText('What you tapped here before is kept. It is not yet in the book.').waitFor();
      const stage = page.getByRole('application');
      expect(await stage.getAttribute('aria-label')).toBe(`The photo, ${SLAB.edge.length} marked`);

      await stage.focus();
      await page.keyboard.press('n');
      const status = page.getByText(/^Edge point 1 of/);
      const across = async () => Number(/, (\d+) across/.exec(await status.innerText())?.[1]);
      const before = await across();
      await page.keyboard.press('ArrowRight');
      await expect.poll(across).toBe(before + 1);
      await page.keyboard.press('Control+z');
      await expect.poll(across).toBe(before);
      await page.keyboard.press('Escape');
      await expectAccessible(page);
      await expectNoSideways(page);

      const why = page.getByLabel('Why it is measured again');
      if (await why.isVisible()) await why.fill('Measured from above');
      await context.setOffline(true);
      await key(page, 'Outline into the book').click();
      await page
        .getByText(/not yet in the book|no network/i)
        .last()
        .waitFor();
      await context.setOffline(false);
      await key(page, 'Outline into the book').click();
      await page.waitForURL(`**${piece}`);
      await page.getByText(/Drawn to scale from a photo/).waitFor();

      const photo = page.locator('main svg image').first();
      const address = await photo.getAttribute('href');
      expect((await page.request.get(address ?? '')).headers()['content-type']).toBe('image/jpeg');
      const history = await page.locator('main').innerText();
      const long = /Measured from a photo, true to [^:]+: (?:≈ )?([\d,.]+) mm long/
        .exec(history)?.[1]
        ?.replaceAll(',', '');
      const inches = /Measured from a photo, true to [^:]+: (?:≈ )?(\d+)[^:]* in long/.exec(history)?.[1];
      // One pixel of the screen is four of the photo, some five millimetres of the slab's end.
      expect(Math.abs((long ? Number(long) : Number(inches) * 25.4) - 1800)).toBeLessThan(40);
      await expectAccessible(page);

      await page.goto(`${piece}/photo`);
      await page.getByLabel('The photo').waitFor();
      expect(await page.getByText('What you tapped here before is kept').count()).toBe(0);
    });
    expect(trouble.filter((said) => !/ERR_INTERNET_DISCONNECTED|Failed to fetch/.test(said))).toEqual([]);
    expect(await proved(served)).toContain('every rule holds');
    await context.close();
  });
});
