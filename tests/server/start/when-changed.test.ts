import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { whenChanged } from '@/scripts/when-changed.mjs';

const root = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-test-'));
afterAll(() => fs.rmSync(root, { recursive: true, force: true }));

const write = (name: string, text: string) => fs.writeFileSync(path.join(root, name), text);
const settings = (include: string[], strict = true) =>
  write('tsconfig.json', JSON.stringify({ compilerOptions: { strict }, include }, null, 2));
const run = (work: () => Promise<unknown> = async () => undefined) =>
  whenChanged({ root, stamps: path.join(root, 'stamps') }, 'build', ['in', 'tsconfig.json'], 'in', work);

describe('a step of the start', () => {
  beforeEach(async () => {
    fs.rmSync(path.join(root, 'stamps'), { recursive: true, force: true });
    write('in', 'one');
    settings(['**/*.ts']);
    expect(await run()).toBe(true);
  });

  it('is done again only when what it is made of changed', async () => {
    expect(await run()).toBe(false);
    write('in', 'two');
    expect(await run()).toBe(true);
    expect(await run()).toBe(false);
  });

  it('is done again when it was broken off, though what it is made of is as it last succeeded', async () => {
    write('in', 'two');
    await expect(run(() => Promise.reject(new Error('broken off')))).rejects.toThrow('broken off');
    write('in', 'one');
    expect(await run()).toBe(true);
  });

  it('is done again when something changed under it', async () => {
    write('in', 'two');
    expect(await run(async () => write('in', 'three'))).toBe(true);
    expect(await run()).toBe(true);
    expect(await run()).toBe(false);
  });

  it('is not done again for what it wrote into the compiler’s settings itself', async () => {
    settings(['**/*.ts', '.next/types/**/*.ts']);
    expect(await run()).toBe(false);
    settings(['**/*.ts'], false);
    expect(await run()).toBe(true);
  });
});
