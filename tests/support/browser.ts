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

/** How far apart a hand scanner's keys come, seconds. */
const KEY_GAP = 0.008;

/**
 * Types a code as a hand scanner does: fast, ending with Enter. The keys carry the scanner's own times, so that a busy
 * machine, which brings them late, does not turn the scanner into somebody who types.
 */
export async function wedge(page: Page, text: string): Promise<void> {
  const keyboard = await page.context().newCDPSession(page);
  let at = Date.now() / 1000;
  const press = async (key: {
    key: string;
    text?: string;
    code?: string;
    modifiers?: number;
    windowsVirtualKeyCode?: number;
  }) => {
    at += KEY_GAP;
    await keyboard.send('Input.dispatchKeyEvent', { type: 'keyDown', timestamp: at, ...key });
    await keyboard.send('Input.dispatchKeyEvent', {
      type: 'keyUp',
      timestamp: at + KEY_GAP / 2,
      ...key,
      text: undefined,
    });
  };
  for (const character of text) {
    if (character === '\u001d')
      await press({ key: ']', code: 'BracketRight', modifiers: 2, windowsVirtualKeyCode: 221 });
    else await press({ key: character, text: character });
  }
  await press({ key: 'Enter', code: 'Enter', text: '\r', windowsVirtualKeyCode: 13 });
  await keyboard.detach();
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
