// What `npm start` and `npm test` share. Plain JavaScript on Node alone: it runs before anything is installed.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

export const root = path.join(import.meta.dirname, '..');
const bin = (name) => path.join(root, 'node_modules', '.bin', name);
const stampFolder = path.join(root, 'node_modules', '.flitchbook');

/** Runs a command and answers when it ends; throws with its last words when it fails. */
export function run(command, args, { quiet = true, env = {} } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    });
    let said = '';
    const keep = (chunk) => {
      said = (said + chunk).slice(-8000);
    };
    child.stdout?.on('data', keep);
    child.stderr?.on('data', keep);
    child.on('error', reject);
    child.on('close', (code) =>
      code === 0 ? resolve(said) : reject(new Error(`${command} ${args.join(' ')} ended with ${code}\n${said}`)),
    );
  });
}

/** Says a step while it runs, and how long it took. */
export async function step(words, work) {
  const begun = Date.now();
  const alive = setInterval(
    () => process.stdout.isTTY || console.log(`  … ${words}, ${Math.round((Date.now() - begun) / 1000)} s`),
    15_000,
  );
  process.stdout.write(process.stdout.isTTY ? `  … ${words}` : `  … ${words}\n`);
  try {
    const note = await work();
    const took = `${((Date.now() - begun) / 1000).toFixed(1)} s`;
    process.stdout.write(`${process.stdout.isTTY ? '\r' : ''}  ✓ ${words}${note ? ` (${note})` : ''}, ${took}\n`);
  } catch (error) {
    process.stdout.write(`${process.stdout.isTTY ? '\r' : ''}  ✗ ${words}\n`);
    throw error;
  } finally {
    clearInterval(alive);
  }
}

/** A digest of files and folders, so that nothing is done again that did not change. */
function digestOf(paths) {
  const hash = createHash('sha256').update(process.version);
  const visit = (file) => {
    const stat = fs.statSync(file, { throwIfNoEntry: false });
    if (!stat) return;
    if (stat.isDirectory()) {
      for (const name of fs.readdirSync(file).sort()) {
        if (name !== 'node_modules' && name !== 'generated') visit(path.join(file, name));
      }
    } else hash.update(path.relative(root, file)).update(fs.readFileSync(file));
  };
  for (const each of paths) visit(path.join(root, each));
  return hash.digest('hex');
}

/** Runs `work` when the digest of `inputs` is not the one it last succeeded with, or `output` is missing. */
async function whenChanged(name, inputs, output, work) {
  const stamp = path.join(stampFolder, name);
  const digest = digestOf(inputs);
  const last = fs.existsSync(stamp) ? fs.readFileSync(stamp, 'utf8') : '';
  if (last === digest && fs.existsSync(path.join(root, output))) return 'unchanged';
  await work();
  fs.mkdirSync(stampFolder, { recursive: true });
  fs.writeFileSync(stamp, digestOf(inputs));
  return '';
}

export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(`Flitchbook needs Node.js 20.19 or later; this is ${process.versions.node}. Nothing was changed.`);
  process.exit(1);
}

export const install = () =>
  step('installing packages', () =>
    whenChanged('install', ['package.json', 'package-lock.json'], 'node_modules/next/package.json', async () => {
      await run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund']);
      const addon = path.join(root, 'node_modules/better-sqlite3/build/Release/better_sqlite3.node');
      if (!fs.existsSync(addon)) await run('npm', ['rebuild', 'better-sqlite3']);
    }),
  );

export const generate = () =>
  step('making the database client and the decoder files', async () => {
    const note = await whenChanged(
      'generate',
      ['prisma/schema.prisma', 'package-lock.json'],
      'prisma/generated/client.ts',
      () =>
        // The generator is WebAssembly; naming any existing file keeps the CLI from downloading an engine it does not need.
        run(bin('prisma'), ['generate', '--schema', 'prisma/schema.prisma'], {
          env: { PRISMA_SCHEMA_ENGINE_BINARY: process.execPath },
        }),
    );
    await whenChanged('vendor', ['scripts/copy-vendor.ts', 'package-lock.json'], 'public/vendor', () =>
      run(bin('tsx'), ['scripts/copy-vendor.ts']),
    );
    return note;
  });

export const build = () =>
  step('building the app', () =>
    whenChanged(
      'build',
      [
        'app',
        'shared',
        'prisma',
        'public',
        'next.config.ts',
        'proxy.ts',
        'tsconfig.json',
        'package.json',
        'package-lock.json',
      ],
      '.next/BUILD_ID',
      () => run(bin('next'), ['build']),
    ),
  );

export const migrate = () =>
  step('opening the book', async () => (await run(bin('tsx'), ['scripts/migrate.ts'])).trim());
