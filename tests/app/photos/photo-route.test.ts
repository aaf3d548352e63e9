import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { GET } from '@/app/photos/[file]/route';

const before = process.env.FLITCHBOOK_DATA;
let folder: string;

beforeAll(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'flitchbook-test-'));
  process.env.FLITCHBOOK_DATA = folder;
});
afterAll(() => {
  if (before === undefined) delete process.env.FLITCHBOOK_DATA;
  else process.env.FLITCHBOOK_DATA = before;
  fs.rmSync(folder, { recursive: true, force: true });
});

const ask = (file: string) => GET(new Request('http://shop/photos/x'), { params: Promise.resolve({ file }) });
const picture = () =>
  sharp({ create: { width: 12, height: 8, channels: 3, background: '#d8b68a' } })
    .png()
    .toBuffer();

describe('a photo of the book', () => {
  it('is served as a picture that a browser may keep, under the name it was kept by', async () => {
    for (const caption of ['', 'Butt end']) {
      const kept = await receivePhoto(await picture(), caption);
      if (!kept.ok) throw new Error(kept.error.code);
      const response = await ask(kept.value.file);
      expect(response.status).toBe(200);
      expect(response.headers.get('Content-Type')).toBe('image/jpeg');
      expect(response.headers.get('X-Content-Type-Options')).toBe('nosniff');
      expect(response.headers.get('Cache-Control')).toContain('immutable');
      const sent = await sharp(Buffer.from(await response.arrayBuffer())).metadata();
      expect([sent.format, sent.width, sent.height]).toEqual(['jpeg', 12, 8]);
    }
  });

  it('is not served under any name that photos do not have, whatever file it would reach', async () => {
    fs.writeFileSync(path.join(folder, 'flitchbook.db'), 'secret');
    fs.mkdirSync(path.join(folder, 'photos'), { recursive: true });
    fs.writeFileSync(path.join(folder, 'photos', 'notes.txt'), 'secret');
    for (const file of [
      '../flitchbook.db',
      '..%2fflitchbook.db',
      'notes.txt',
      '',
      '.',
      'x.jpg',
      `${'a'.repeat(32)}.jpg/../notes.txt`,
    ]) {
      const response = await ask(file);
      expect(response.status, file).toBe(404);
      expect(await response.text(), file).not.toContain('secret');
    }
  });

  it('that is not there is a plain 404', async () => {
    expect((await ask(`${'0'.repeat(32)}.jpg`)).status).toBe(404);
  });

  it('that the disk does not give up is said in plain words, without its path', async () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const file = `${'1'.repeat(32)}.jpg`;
    fs.mkdirSync(path.join(folder, 'photos', file), { recursive: true });
    const response = await ask(file);
    expect(response.status).toBe(500);
    const words = await response.text();
    expect(words).toContain('The book is unchanged.');
    expect(words).not.toContain(folder);
    vi.restoreAllMocks();
  });
});
