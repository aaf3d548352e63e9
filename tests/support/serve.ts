import { type ChildProcess, spawn } from 'node:child_process';
import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

export type Served = { url: string; folder: string; stop: () => Promise<void> };

/** Starts the built app on a free loopback port with a book of its own in a temporary folder, made by the script. */
export async function serve(env: Record<string, string> = {}, prepare = 'scripts/migrate.ts'): Promise<Served> {
  if (!fs.existsSync(path.join(root, '.next/BUILD_ID'))) throw new Error('There is no build to test: run npm test.');
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-served-'));
  const port = await freePort();
  await runToEnd(['node_modules/.bin/tsx', prepare], { ...env, FLITCHBOOK_DATA: folder });
  const child = spawn(
    process.execPath,
    ['node_modules/next/dist/bin/next', 'start', '-H', '127.0.0.1', '-p', String(port)],
    {
      cwd: root,
      env: { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1', FLITCHBOOK_DATA: folder, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  let said = '';
  child.stdout?.on('data', (chunk) => (said += chunk));
  child.stderr?.on('data', (chunk) => (said += chunk));
  await waitUntil(
    () => /Ready in/.test(said),
    () => said,
  );
  return {
    url: `http://127.0.0.1:${port}`,
    folder,
    stop: async () => {
      await end(child);
      fs.rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** What `npm run prove` says of the book that is served; throws when a rule does not hold. */
export function proved(served: Served): Promise<string> {
  return runToEnd(['node_modules/.bin/tsx', 'scripts/prove.ts'], { FLITCHBOOK_DATA: served.folder });
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = net.createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() =>
        address && typeof address === 'object' ? resolve(address.port) : reject(new Error('no port')),
      );
    });
  });
}

function runToEnd([command = '', ...args]: string[], env: Record<string, string>): Promise<string> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk) => (said += chunk));
    child.on('error', reject);
    child.on('close', (code) =>
      code === 0 ? resolve(said) : reject(new Error(`${args.join(' ')} ended with ${code}: ${said}`)),
    );
  });
}

async function waitUntil(ready: () => boolean, said: () => string): Promise<void> {
  for (let tries = 0; tries < 600; tries += 1) {
    if (ready()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`The server did not start in a minute.\n${said()}`);
}

function end(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null) return resolve();
    child.once('close', () => resolve());
    child.kill('SIGTERM');
  });
}
