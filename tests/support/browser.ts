import { AxeBuilder } from '@axe-core/playwright';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright';
import { expect } from 'vitest';
import { browserArgs, findBrowser } from '@/scripts/find-browser.mjs';

export const PHONE = { width: 390, height: 844 };
export const DESK = { width: 1440, height: 900 };

/** A browser to test with; give it a fake camera's flags to let it see. */
export async function openBrowser(flags: string[] = []): Promise<Browser> {
  const executablePath = await findBrowser();
  return chromium.launch({ executablePath, args: [...browserArgs, ...flags] });
}

export type Visit = { context: BrowserContext; page: Page; trouble: string[] };

/** A visitor of the app. What the page complains of is gathered, so that a test can expect none. */
export async function visit(
  browser: Browser,
  url: string,
  { size = PHONE, scheme = 'light' as 'light' | 'dark', camera = false } = {},
): Promise<Visit> {
  const context = await browser.newContext({
    baseURL: url,
    viewport: size,
    colorScheme: scheme,
    permissions: camera ? ['camera'] : [],
    timezoneId: 'America/New_York',
    locale: 'en-US',
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  const trouble: string[] = [];
  page.on('pageerror', (error) => trouble.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') trouble.push(`${message.text()} ${message.location().url}`);
  });
  return { context, page, trouble };
}

/** Fails with the rules and the elements when axe finds anything. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.target.join(' ')).join(', ')}`)).toEqual(
    [],
  );
}

/** Fails when the page is wider than the window. */
export async function expectNoSideways(page: Page): Promise<void> {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(over).toBeLessThanOrEqual(0);
}

/** Types a code as a hand scanner does: fast, ending with Enter. */
export async function wedge(page: Page, text: string): Promise<void> {
  for (const character of text) {
    if (character === '\u001d') await page.keyboard.press('Control+]');
    else await page.keyboard.press(character === ' ' ? 'Space' : character);
  }
  await page.keyboard.press('Enter');
}

/** Keeps a picture of the page beside the test's output when something went wrong in it, and lets the failure through. */
export async function picturedOnFailure<T>(page: Page, name: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    await page.screenshot({ path: `test-output/${name}.png`, fullPage: true }).catch(() => undefined);
    throw error;
  }
}
