// Finds a Chromium to test with: named by CHROMIUM_PATH, installed on the system, or fetched by Playwright before.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';

const INSTALLED = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/** The path of a browser that is there, or undefined. */
export async function findBrowser() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (fs.existsSync(named)) return named;
    throw new Error(`CHROMIUM_PATH names ${named}, which is not there.`);
  }
  const installed = INSTALLED.find((each) => fs.existsSync(each));
  if (installed) return installed;
  const { chromium } = await import('playwright');
  const fetched = chromium.executablePath();
  return fetched && fs.existsSync(fetched) ? fetched : undefined;
}

/** Finds a browser, or installs one: by Playwright where it can download, else from Debian's packages. */
export async function ensureBrowser() {
  const found = await findBrowser();
  if (found) return found;
  const root = typeof process.getuid === 'function' && process.getuid() === 0;
  const apt = fs.existsSync('/usr/bin/apt-get');
  const ways = [['npx', ['playwright', 'install', ...(root && apt ? ['--with-deps'] : []), 'chromium']]];
  if (apt) {
    const sudo = root ? [] : ['sudo', '-n'];
    ways.push(
      [...sudo, 'apt-get', 'update'],
      [...sudo, 'apt-get', 'install', '-y', '--no-install-recommends', 'chromium'],
    );
  }
  for (const way of ways) {
    const [command, args] = Array.isArray(way[1]) ? way : [way[0], way.slice(1)];
    spawnSync(command, args, {
      stdio: 'ignore',
      timeout: 300_000,
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    const now = await findBrowser();
    if (now) return now;
  }
  throw new Error(
    'No browser to test with, and none could be installed. Install Chromium or Chrome, or name one: CHROMIUM_PATH=/path npm test',
  );
}

/** How a test browser is started; as root Chromium's own sandbox is not available. */
export const browserArgs = [
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  ...(typeof process.getuid === 'function' && process.getuid() === 0 ? ['--no-sandbox'] : []),
];
