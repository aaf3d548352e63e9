// `npm start`: installs, generates, builds, migrates, serves. Does again only what changed.
import { spawn } from 'node:child_process';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { build, checkNode, generate, install, migrate, root } from './steps.mjs';
import { whereToServe } from './where-to-serve.mjs';

checkNode();
const data = path.resolve(process.env.FLITCHBOOK_DATA ?? path.join(root, 'data'));
/** Asked before anything is done, and again when the book is open: what it says is kept with the book. */
const serving = () => {
  try {
    return whereToServe(data, process.env);
  } catch (error) {
    console.error(`${error.message}\nNothing was started.`);
    return process.exit(1);
  }
};
serving();
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
  console.log(`  ${whereTheBookIs()} Stop with Ctrl+C.`);
});
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal));
server.on('close', (code, signal) => process.exit(signal ? 0 : (code ?? 1)));

/** The server's name and the database's, never its user or password. */
function whereTheBookIs() {
  const address = process.env.FLITCHBOOK_DATABASE_URL;
  if (!address) return `The book is in ${data}.`;
  const { host: server, pathname } = new URL(address);
  return `The book is in the database ${pathname.slice(1)} at ${server}, its photos and sheets in ${data}.`;
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
