// `npm test`: installs what it needs (a browser too), checks, runs every test, builds, and walks the app in the browser.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { check } from './check.mjs';
import { build, checkNode, generate, install, root, step } from './steps.mjs';

checkNode();
// No test is of the book that the surroundings name.
delete process.env.FLITCHBOOK_DATABASE_URL;
const output = path.join(root, 'test-output');
fs.mkdirSync(output, { recursive: true });
const totals = { passed: 0, failed: 0 };
try {
  await install();
  await generate();
  let browser = '';
  await step('finding a browser', async () => {
    const { ensureBrowser } = await import('./find-browser.mjs');
    browser = await ensureBrowser();
    return browser;
  });
  await check();
  await vitest('rules, in three time zones', ['rules', 'in-new-york', 'in-kiritimati']);
  await vitest('the store, in a file', ['store']);
  await vitest('the store, on a PostgreSQL server', ['store-on-a-server']);
  await build();
  await vitest('the app in a browser', ['browser'], { CHROMIUM_PATH: browser });
} catch (error) {
  console.error(`\n${error.message}`);
  totals.failed += totals.failed ? 0 : 1;
}
console.log(`\n${totals.passed} passed, ${totals.failed} failed`);
process.exit(totals.failed ? 1 : 0);

function vitest(words, projects, env = {}) {
  const file = path.join(output, `${projects[0]}.json`);
  fs.rmSync(file, { force: true });
  const args = [
    'run',
    ...projects.flatMap((name) => ['--project', name]),
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ];
  return new Promise((resolve, reject) => {
    console.log(`\n${words}`);
    const child = spawn(path.join(root, 'node_modules/.bin/vitest'), args, {
      cwd: root,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', NO_COLOR: '1', ...env },
      stdio: ['ignore', 'inherit', 'inherit'],
    });
    child.on('error', reject);
    child.on('close', (code) => {
      const report = fs.existsSync(file) ? JSON.parse(fs.readFileSync(file, 'utf8')) : undefined;
      totals.passed += report?.numPassedTests ?? 0;
      totals.failed += report?.numFailedTests ?? 0;
      if (code !== 0) reject(new Error(`${words}: not all passed`));
      else if (!report?.numPassedTests) reject(new Error(`${words}: no test ran`));
      else resolve();
    });
  });
}
