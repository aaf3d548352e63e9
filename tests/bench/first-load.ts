import { gzipSync } from 'node:zlib';
import { chromium, type Page } from 'playwright';
import { browserArgs, ensureBrowser } from '../../scripts/find-browser.mjs';

export type FirstLoad = {
  page: string;
  /** Bytes of every script the page asked for before it was touched, each compressed by itself as the server sends it. */
  gzip: number;
  /** Of these, the ones its HTML names; the others it fetched ahead, once it was there. */
  named: number;
  /** Files of the decoder asked for before the camera was opened. */
  decoderBefore: number;
};

const DECODER = /\/vendor\/|\.wasm|worker/;
const CAMERA = ['--use-fake-device-for-media-stream'];

/**
 * Opens Arrive and Pull as a first visit and adds up the scripts that come before anything is touched; then opens the
 * camera, to see that the decoder comes with it, so that a decoder counted as absent before is one that would be seen.
 */
export async function firstLoads(origin: string): Promise<FirstLoad[]> {
  const browser = await chromium.launch({ executablePath: await ensureBrowser(), args: [...browserArgs, ...CAMERA] });
  const found: FirstLoad[] = [];
  try {
    // Pull asks what it is for before it shows the camera's key.
    for (const [name, first] of [['arrive'], ['pull', /^Table /]] as const) {
      const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
      const page = await context.newPage();
      found.push(await firstLoad(page, `${origin}/${name}`, name, first));
      await context.close();
    }
  } finally {
    await browser.close();
  }
  return found;
}

async function firstLoad(page: Page, url: string, name: string, first: RegExp | undefined): Promise<FirstLoad> {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('worker', (worker) => asked.push(`worker of ${worker.url()}`));
  const scripts = new Map<string, Promise<number>>();
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (!/\.m?js$/.test(pathname)) return;
    scripts.set(
      pathname,
      response.body().then((body) => gzipSync(body).length),
    );
  });
  const html = (await (await page.goto(url, { waitUntil: 'networkidle' }))?.text()) ?? '';
  const sizes = await Promise.all([...scripts].map(async ([path, size]) => ({ path, size: await size })));
  if (first) await page.getByRole('button', { name: first }).first().click();
  await page.getByRole('button', { name: 'Open camera' }).waitFor();
  const decoderBefore = asked.filter((each) => DECODER.test(each)).length;
  // Allowed only now: a camera that was allowed before opens by itself.
  await page.context().grantPermissions(['camera']);
  await page.getByRole('button', { name: 'Open camera' }).click();
  await page.waitForTimeout(3000);
  if (!asked.some((each) => DECODER.test(each)))
    throw new Error(`${name}: the camera opened and no decoder was fetched.`);
  const sum = (some: typeof sizes) => some.reduce((total, { size }) => total + size, 0);
  return { page: name, gzip: sum(sizes), named: sum(sizes.filter(({ path }) => html.includes(path))), decoderBefore };
}
