import { gzipSync } from 'node:zlib';
import { chromium, type Page } from 'playwright';
import { browserArgs, ensureBrowser } from '../../scripts/find-browser.mjs';

export type FirstLoad = {
  page: string;
  files: number;
  /** Of every script the page asked for, each compressed by itself as the server sends it. */
  gzip: number;
  /** Files of the decoder asked for before the camera was opened. */
  decoderBefore: number;
};

const DECODER = /\/vendor\/|\.wasm|worker/;
const CAMERA = ['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream'];

/**
 * Opens Arrive and Pull as a first visit and adds up the scripts that come before anything is touched; then opens the
 * camera, to see that the decoder comes with it, so that a decoder counted as absent before is one that would be seen.
 */
export async function firstLoads(origin: string): Promise<FirstLoad[]> {
  const browser = await chromium.launch({ executablePath: await ensureBrowser(), args: [...browserArgs, ...CAMERA] });
  const found: FirstLoad[] = [];
  try {
    for (const name of ['arrive', 'pull']) {
      const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
      const page = await context.newPage();
      found.push(await firstLoad(page, `${origin}/${name}`, name));
      await context.close();
    }
  } finally {
    await browser.close();
  }
  return found;
}

async function firstLoad(page: Page, url: string, name: string): Promise<FirstLoad> {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('worker', (worker) => asked.push(`worker of ${worker.url()}`));
  const scripts = new Map<string, Promise<number>>();
  page.on('response', (response) => {
    if (!/\.m?js$/.test(new URL(response.url()).pathname)) return;
    scripts.set(
      response.url(),
      response.body().then((body) => gzipSync(body).length),
    );
  });
  await page.goto(url, { waitUntil: 'networkidle' });
  const decoderBefore = asked.filter((each) => DECODER.test(each)).length;
  const sizes = await Promise.all(scripts.values());
  await page.getByRole('button', { name: 'Open camera' }).click();
  await page.waitForTimeout(3000);
  if (!asked.some((each) => DECODER.test(each)))
    throw new Error(`${name}: the camera opened and no decoder was fetched.`);
  return { page: name, files: sizes.length, gzip: sizes.reduce((sum, size) => sum + size, 0), decoderBefore };
}
