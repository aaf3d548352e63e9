import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { NextRequest } from 'next/server';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { askBook, readProducts } from '@/app/(shop)/arrive/actions';
import { findOnHand } from '@/app/(shop)/on-hand/actions';
import { GET as pullAnswer } from '@/app/(shop)/pull/answer/route';
import { GET as written } from '@/app/(shop)/pull/written/route';
import { GET as labelsPdf } from '@/app/api/labels/pdf/route';
import { GET as labelSvg } from '@/app/api/labels/svg/route';
import { GET as onHand } from '@/app/api/on-hand/route';
import { GET as verdict } from '@/app/api/verdict/route';
import { POST as weigh } from '@/app/api/weigh/route';

vi.mock('next/cache', () => ({ revalidatePath: () => undefined }));
vi.mock('next/server', async (original) => ({ ...(await original<object>()), connection: async () => undefined }));
vi.mock('next/headers', () => ({
  headers: async () => new Headers(),
  cookies: async () => ({ get: () => undefined }),
}));

const data = process.env.FLITCHBOOK_DATA;
let folder = '';
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-test-'));
  process.env.FLITCHBOOK_DATA = folder;
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
});
afterEach(() => {
  vi.restoreAllMocks();
  if (data === undefined) delete process.env.FLITCHBOOK_DATA;
  else process.env.FLITCHBOOK_DATA = data;
  fs.rmSync(folder, { recursive: true, force: true });
});

const get = (address: string) => new NextRequest(`http://localhost${address}`);
const post = () =>
  new Request('http://localhost/api/weigh', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify({ key: 'key-of-a-scale', input: { label: 'C4V9TN3', left: 400_000, why: 'weighed' } }),
  });

describe('where the book is in trouble', () => {
  it.each([
    ['a question at the bench', () => pullAnswer(get('/pull/answer?code=C4V9TN3&dayOfUse=2026-12-19&purpose=client'))],
    ['a verdict', () => verdict(get('/api/verdict?code=C4V9TN3&day=2026-12-19&purpose=client'))],
    ['what is on hand', () => onHand(get('/api/on-hand?show=materials'))],
    ['a weighing', () => weigh(post())],
    ['what a press wrote', () => written(get('/pull/written?key=0123456789abcdef'))],
  ])('%s is answered with 503 and the trouble in plain words', async (_, ask) => {
    fs.writeFileSync(path.join(folder, 'flitchbook.db'), 'This is a shopping list. '.repeat(200));
    const response = await ask();
    expect(response.status).toBe(503);
    const { ok, problem } = await response.json();
    expect(ok).toBe(false);
    expect(problem).toMatchObject({ code: 'not-a-book' });
    expect(problem.what).toMatch(/^The database file is not a Flitchbook, or is damaged\./);
    expect(JSON.stringify(problem)).not.toContain(folder);
  });

  it.each([
    ['labels to print', () => labelsPdf(get('/api/labels/pdf?codes=C-4V9TN3&format=a4-3x8'))],
    ['a label as a drawing', () => labelSvg(get('/api/labels/svg?code=C-4V9TN3&format=62x29'))],
  ])('%s are answered with 503 and the trouble as plain text', async (_, ask) => {
    fs.writeFileSync(path.join(folder, 'flitchbook.db'), 'This is a shopping list. '.repeat(200));
    const response = await ask();
    expect(response.status).toBe(503);
    expect(response.headers.get('Content-Type')).toMatch(/^text\/plain/);
    const words = await response.text();
    expect(words).toMatch(/^The database file is not a Flitchbook, or is damaged\./);
    expect(words).toContain('Nothing was printed');
    expect(words).not.toContain(folder);
  });

  it.each([
    ['what a scan means', () => askBook({ text: '04012345678901' })],
    ['the products to choose from', () => readProducts()],
    ['what is on the shelf', () => findOnHand({ query: '', show: 'materials', withEmpty: false })],
  ])('%s comes back as the trouble in words, not as an error without them', async (_, ask) => {
    fs.writeFileSync(path.join(folder, 'flitchbook.db'), 'This is a shopping list. '.repeat(200));
    const read = await ask();
    expect(read).toMatchObject({ ok: false, problem: { code: 'not-a-book' } });
    if (!read.ok) expect(read.problem.what).toMatch(/^The database file is not a Flitchbook, or is damaged\./);
  });
});
