// `npm start`: installs, generates, builds, migrates, serves. Does again only what changed.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { build, checkNode, generate, install, migrate, root } from './steps.mjs';

checkNode();
console.log('Flitchbook');
try {
  await install();
  await generate();
  await build();
  await migrate();
} catch (error) {
  console.error(`\nFlitchbook did not start. Your book was not touched beyond what is said above.\n\n${error.message}`);
  process.exit(1);
}

const data = path.resolve(process.env.FLITCHBOOK_DATA ?? path.join(root, 'data'));
const { host, port } = serving();
if (!(await isFree(host, port))) {
  console.error(
    `\nPort ${port} is in use, perhaps by another Flitchbook. Nothing was started. Stop it, or choose another: PORT=3001 npm start`,
  );
  process.exit(1);
}
const server = spawn(
  process.execPath,
  [path.join(root, 'node_modules/next/dist/bin/next'), 'start', '-H', host, '-p', String(port)],
  {
    cwd: root,
    env: {
      ...process.env,
      NEXT_TELEMETRY_DISABLED: '1',
      FLITCHBOOK_DATA: data,
      FLITCHBOOK_NETWORK: isLoopback(host) ? '0' : '1',
    },
    stdio: ['ignore', 'pipe', 'inherit'],
  },
);
let announced = false;
server.stdout.on('data', (chunk) => {
  if (announced || !/Ready in/.test(String(chunk))) return;
  announced = true;
  console.log(`\n  Flitchbook is open at http://localhost:${port}`);
  for (const address of host === '0.0.0.0' ? addresses() : [])
    console.log(`  and in this network at http://${address}:${port}`);
  console.log(`  The book is in ${data}. Stop with Ctrl+C.`);
});
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal));
server.on('close', (code, signal) => process.exit(signal ? 0 : (code ?? 1)));

/** Loopback unless the workshop opened the book to its network in the settings. */
function serving() {
  let open = false;
  try {
    open = JSON.parse(fs.readFileSync(path.join(data, 'serving.json'), 'utf8')).network === true;
  } catch {
    // No settings yet: loopback.
  }
  return { host: process.env.HOST ?? (open ? '0.0.0.0' : '127.0.0.1'), port: Number(process.env.PORT ?? 3000) };
}

function isLoopback(host) {
  return host === '127.0.0.1' || host === 'localhost' || host === '::1';
}

function isFree(host, port) {
  return new Promise((resolve) => {
    const probe = net.createServer();
    probe.once('error', () => resolve(false));
    probe.listen(port, host, () => probe.close(() => resolve(true)));
  });
}

function addresses() {
  return Object.values(os.networkInterfaces())
    .flat()
    .filter((each) => each && each.family === 'IPv4' && !each.internal)
    .map((each) => each.address);
}
