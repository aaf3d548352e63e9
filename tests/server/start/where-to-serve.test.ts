import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { whereToServe } from '@/scripts/where-to-serve.mjs';

const data = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-test-'));
const open = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-test-'));
fs.writeFileSync(path.join(open, 'serving.json'), '{"network":true}\n');
afterAll(() => {
  for (const folder of [data, open]) fs.rmSync(folder, { recursive: true, force: true });
});

describe('where the book is served', () => {
  it('is this computer, unless the workshop opened the book to its network', () => {
    expect(whereToServe(data, {})).toEqual({ host: '127.0.0.1', port: 3000 });
    expect(whereToServe(open, {})).toEqual({ host: '0.0.0.0', port: 3000 });
  });

  it('is not what a shell calls this computer', () => {
    expect(whereToServe(data, { HOST: 'bench-laptop' }).host).toBe('127.0.0.1');
    expect(whereToServe(data, { HOST: 'bench-laptop', FLITCHBOOK_HOST: '192.168.1.5' }).host).toBe('192.168.1.5');
  });

  it('is the port that was asked for, where that is one', () => {
    expect(whereToServe(data, { PORT: '3001' }).port).toBe(3001);
    expect(whereToServe(data, { PORT: '65535' }).port).toBe(65_535);
    expect(whereToServe(data, { PORT: '' }).port).toBe(3000);
  });

  it.each(['0', '65536', '80a', '3001.5', '-1', '1e3', 'http'])('refuses a port that is none, in words: %s', (PORT) => {
    expect(() => whereToServe(data, { PORT })).toThrow(`PORT is "${PORT}", which is no port.`);
  });
});
