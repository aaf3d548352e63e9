import { request } from 'node:http';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DESK, expectAccessible, expectNoSideways, openBrowser, PHONE, visit } from '@/tests/support/browser';
import { type Served, serve } from '@/tests/support/serve';

/** Pages that are there in every book; those of one thing are found from the lists. */
const PAGES = [
  '/arrive',
  '/arrive/wood',
  '/arrive/move',
  '/on-hand',
  '/on-hand?show=wood',
  '/on-hand?q=resin',
  '/on-hand/fits',
  '/on-hand/wall',
  '/on-hand/buy',
  '/on-hand/buy?unsure=yes',
  '/on-hand/arriving',
  '/on-hand/wall?species=Walnut&thick=50 mm&free=yes',
  '/on-hand?show=wood&form=board&free=yes',
  '/species?q=oak',
  '/on-hand/fits?shape=rectangle&l=1800&w=600&r=50',
  '/pull',
  '/jobs',
  '/jobs/new',
  '/jobs/pour-for',
  '/watch',
  '/samples',
  '/samples?all=1',
  '/samples?one=1',
  '/trace/sample/1',
  '/jobs/allotted',
  '/places',
  '/stocktake',
  '/products',
  '/resin',
  '/settings',
  '/labels',
  '/scan?code=(01)09520000000000',
];
const THINGS = [
  { list: '/on-hand?q=resin', link: 'a[href^="/containers/"]' },
  { list: '/on-hand?show=wood', link: 'a[href^="/pieces/"]' },
  { list: '/on-hand?show=wood&form=pack', link: 'a[href^="/pieces/"]' },
  { list: '/on-hand?show=wood&form=sheet', link: 'a[href^="/pieces/"]' },
  { list: '/places', link: 'a[href^="/places/"]' },
  // A room whose air is logged, with wood in it.
  { list: '/places', link: 'a[href^="/places/"]:has-text("Slab barn")' },
  { list: '/stocktake', link: 'a[href^="/stocktake/"]' },
  { list: '/stocktake', link: 'ul[aria-label="Behind"] a[href^="/stocktake/"]' },
  { list: '/products', link: 'a[href^="/products/"]' },
  { list: '/jobs', link: 'a[href^="/jobs/"]:not([href$="new"])' },
  // A job with parts, steps and coats.
  { list: '/jobs', link: 'a[href^="/jobs/"]:has-text("Gannet Inn bar top")' },
  { list: '/resin', link: 'a[href^="/resin/"]' },
  // A finish with what its sheet says.
  { list: '/products', link: 'a[href^="/products/"]:has-text("Hardwax oil")' },
];

/** Some seventy pages, each opened, let settle and looked through. */
const ALL_PAGES_MS = 600_000;

describe('every page of the demo workshop', () => {
  let served: Served;
  let browser: Browser;
  let things: string[] = [];

  beforeAll(async () => {
    served = await serve({}, 'scripts/demo.ts');
    browser = await openBrowser();
    const { page, context } = await visit(browser, served.url);
    for (const { list, link } of THINGS) {
      await page.goto(list);
      const href = await page.locator(link).first().getAttribute('href');
      if (href) things.push(href);
    }
    const piece = things.find((href) => href.startsWith('/pieces/'));
    await page.goto(things[0] ?? '');
    const lot = await page.locator('a[href^="/lots/"]').first().getAttribute('href');
    // A pour half way, and one that is done.
    await page.goto('/jobs?all=1');
    await page.getByRole('link', { name: /Pond coffee table/ }).click();
    const pour = await page.locator('a[href*="/pours/"]:has-text("Pond")').first().getAttribute('href');
    const pours = ['', '/edit', '/lifts/1', '/lifts/2'].map((part) => `${pour}${part}`);
    things = [
      ...things,
      ...pours,
      `${pour?.split('/').slice(0, -1).join('/')}/new`,
      lot ?? '',
      // Where a lot, a piece and a fault came from and went, and a fault to be written down on a job and on a piece.
      `/trace${lot}`.replace('lots', 'lot'),
      `/trace${piece}`.replace('pieces', 'piece'),
      '/trace/fault/1?all=yes',
      `/faults/new?job=${pour?.split('/')[2]}`,
      `/faults/new?piece=${piece?.split('/').at(-1)}`,
      `${things.find((href) => href.startsWith('/stocktake/'))}/finish`,
      `/labels?codes=${things[0]?.split('/').at(-1)}`,
      ...['finish', 'edit', 'needs'].map((part) => `${things.find((href) => href.startsWith('/jobs/'))}/${part}`),
      ...['photo', 'measure', 'marks', 'cut', 'print'].map((part) => `${piece}/${part}`),
    ];
    await context.close();
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  const LOOKS = [
    { name: 'phone, light', size: PHONE, scheme: 'light' as const },
    { name: 'phone, dark', size: PHONE, scheme: 'dark' as const },
    { name: 'desk, light', size: DESK, scheme: 'light' as const },
    { name: 'desk, dark', size: DESK, scheme: 'dark' as const },
  ];

  it.each(LOOKS)(
    'has nothing axe would name, nothing off the side, and no error: $name',
    async ({ size, scheme }) => {
      const { page, context, trouble } = await visit(browser, served.url, { size, scheme });
      expect(things).toHaveLength(THINGS.length + 21);
      for (const path of [...PAGES, ...things]) {
        await page.goto(path, { waitUntil: 'networkidle' });
        expect(await page.locator('h1').count(), path).toBe(1);
        await expectAccessible(page);
        await expectNoSideways(page);
      }
      expect(trouble).toEqual([]);
      await context.close();
    },
    ALL_PAGES_MS,
  );

  it('has targets of at least 56 px on Arrive and Pull', async () => {
    const { page, context } = await visit(browser, served.url);
    for (const path of ['/arrive', '/pull']) {
      await page.goto(path, { waitUntil: 'networkidle' });
      const small = await page
        .locator('main button:visible, main label:has(input[type=file]):visible')
        .evaluateAll((keys) =>
          keys.filter((key) => key.getBoundingClientRect().height < 56).map((key) => key.textContent),
        );
      expect(small, path).toEqual([]);
    }
    await context.close();
  });

  it('can be walked by keyboard alone, the focus always to be seen', async () => {
    const { page, context } = await visit(browser, served.url, { size: DESK });
    await page.goto('/arrive', { waitUntil: 'networkidle' });
    const seen: string[] = [];
    for (let presses = 0; presses < 12; presses += 1) {
      await page.keyboard.press('Tab');
      const { name, shown } = await focused(page);
      seen.push(name);
      expect(shown, name).toBe(true);
    }
    expect(seen.some((name) => name.includes('Open camera'))).toBe(true);
    await context.close();
  });

  it('answers to no name but its own', async () => {
    const status = await new Promise<number | undefined>((resolve, reject) => {
      const url = new URL(served.url);
      request(
        { host: url.hostname, port: url.port, path: '/arrive', headers: { host: 'elsewhere.example' } },
        (got) => {
          got.resume();
          resolve(got.statusCode);
        },
      )
        .on('error', reject)
        .end();
    });
    expect(status).toBe(421);
  });
});

async function focused(page: Page): Promise<{ name: string; shown: boolean }> {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement)) return { name: '', shown: false };
    const style = getComputedStyle(at);
    const around = at.closest('label');
    const ring = (which: CSSStyleDeclaration) =>
      which.outlineStyle !== 'none' && Number.parseFloat(which.outlineWidth) > 0;
    const shown = ring(style) || style.boxShadow !== 'none' || (around ? ring(getComputedStyle(around)) : false);
    return { name: at.textContent ?? at.tagName, shown };
  });
}
