import { type ChildProcess, spawn } from 'node:child_process';
import path from 'node:path';

const root = path.join(import.meta.dirname, '../..');

export type Ran = { code: number | null; out: string; err: string };

/** Starts a TypeScript file of this project in a process of its own. */
export function startScript(file: string, args: string[], env: Record<string, string> = {}): ChildProcess {
  return spawn(process.execPath, ['--import', 'tsx', path.join(root, file), ...args], {
    cwd: root,
    env: { ...process.env, ...env },
  });
}

/** Runs a TypeScript file of this project to its end. */
export function runScript(file: string, args: string[], env: Record<string, string> = {}): Promise<Ran> {
  return ended(startScript(file, args, env));
}

/** What a process said until it ended. */
export function ended(child: ChildProcess): Promise<Ran> {
  return new Promise((resolve, reject) => {
    let out = '';
    let err = '';
    child.stdout?.on('data', (chunk) => {
      out += String(chunk);
    });
    child.stderr?.on('data', (chunk) => {
      err += String(chunk);
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
  });
}
