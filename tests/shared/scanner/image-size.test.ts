import { deflateSync } from 'node:zlib';
import fc from 'fast-check';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { readImageSize } from '@/app/_ui/scanner/image-size';
import { judgePhoto, judgePhotoFile, photoRefusalWords } from '@/app/_ui/scanner/photo-limits';
import { MOST_PHOTO_BYTES, MOST_PHOTO_PIXELS } from '@/shared/photos/photo-limits';

const picture = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#c39a68' } });

const bytesOf = (...parts: (string | number[])[]) =>
  Uint8Array.from(parts.flatMap((part) => (typeof part === 'string' ? [...part].map((c) => c.charCodeAt(0)) : part)));

const be32 = (value: number) => [value >>> 24, (value >>> 16) & 255, (value >>> 8) & 255, value & 255];

describe('the size stands in the header', () => {
  it.each([
    ['png', (p: Sharp) => p.png()],
    ['jpeg', (p: Sharp) => p.jpeg()],
    ['webp', (p: Sharp) => p.webp()],
    ['webp', (p: Sharp) => p.webp({ lossless: true })],
    ['gif', (p: Sharp) => p.gif()],
    ['avif', (p: Sharp) => p.avif({ effort: 0 })],
  ] as const)('of a %s as an image library writes it', async (kind, write) => {
    const bytes = new Uint8Array(await write(picture(321, 123)).toBuffer());
    expect(readImageSize(bytes)).toEqual({ ok: true, value: { kind, width: 321, height: 123 } });
  });

  it('of a progressive JPEG with its orientation mark and a thumbnail-sized segment before the frame header', async () => {
    const jpeg = await picture(640, 480).withMetadata({ orientation: 6 }).jpeg({ progressive: true }).toBuffer();
    const segment = Buffer.concat([Buffer.from([0xff, 0xe2, 0xff, 0xff]), Buffer.alloc(65_533, 0xc0)]);
    const long = Buffer.concat([jpeg.subarray(0, 2), segment, segment, jpeg.subarray(2)]);
    expect(readImageSize(new Uint8Array(long))).toMatchObject({ ok: true, value: { width: 640, height: 480 } });
  });

  it('of a WebP with opacity, in its extended form', async () => {
    const webp = await picture(50, 60)
      .ensureAlpha(0.5)
      .webp()
      .withExif({ IFD0: { Copyright: 'x' } })
      .toBuffer();
    expect(readImageSize(new Uint8Array(webp))).toMatchObject({
      ok: true,
      value: { kind: 'webp', width: 50, height: 60 },
    });
  });

  it('of a HEIC is that of the whole picture, not of a tile or the thumbnail', () => {
    const ispe = (width: number, height: number) => [
      ...be32(20),
      ...bytesOf('ispe'),
      ...be32(0),
      ...be32(width),
      ...be32(height),
    ];
    const heic = bytesOf(be32(24), 'ftypheic', be32(0), 'mif1heic', ispe(512, 512), ispe(4032, 3024), ispe(320, 240));
    expect(readImageSize(heic)).toEqual({ ok: true, value: { kind: 'heic', width: 4032, height: 3024 } });
  });
});

describe('what is not a picture is refused', () => {
  it.each([
    ['a page', '<!doctype html><html><body>'],
    ['a drawing, which can hold anything', '<svg xmlns="http://www.w3.org/2000/svg">'],
    ['a portable document', '%PDF-1.7 and more bytes'],
    ['a film', '\u0000\u0000\u0000\u0018ftypmp42\u0000\u0000\u0000\u0000'],
    ['too little to tell', 'GIF89a'],
  ])('%s', (_, text) => {
    expect(judgePhoto(text.length, bytesOf(text))).toEqual({ ok: false, error: { code: 'not-an-image' } });
  });

  it('an empty file', () => {
    expect(judgePhoto(0, new Uint8Array())).toEqual({ ok: false, error: { code: 'empty' } });
  });

  it('a known signature with nothing behind it', () => {
    const png = bytesOf([0x89], 'PNG\r\n\u001a\n', be32(13), 'IHDR', be32(0), be32(5));
    expect(judgePhoto(png.length, png)).toEqual({ ok: false, error: { code: 'unreadable-header' } });
    const jpeg = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 0xff, 0xd9, 0, 0, 0, 0, 0, 0]);
    expect(judgePhoto(jpeg.length, jpeg)).toEqual({ ok: false, error: { code: 'unreadable-header' } });
  });

  it('and reading never throws, whatever the bytes', () => {
    const start = fc.constantFrom(
      [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
      [0xff, 0xd8, 0xff],
      [...bytesOf('GIF89a')],
      [...bytesOf('RIFF0000WEBPVP8 ')],
      [...bytesOf('RIFF0000WEBPVP8L')],
      [...bytesOf('0000ftypheic')],
      [],
    );
    fc.assert(
      fc.property(start, fc.uint8Array({ maxLength: 80 }), (head, tail) => {
        const read = readImageSize(Uint8Array.from([...head, ...tail]));
        if (read.ok) expect(read.value.width * read.value.height).toBeGreaterThan(0);
      }),
    );
  });
});

describe('a small file that would unpack into a huge picture is refused', () => {
  /** A complete PNG of one colour: a few kilobytes that claim `side` × `side` pixels. */
  function bomb(side: number): Uint8Array {
    const rows = deflateSync(Buffer.alloc((side / 8 + 1) * 64));
    return bytesOf(
      [0x89],
      'PNG\r\n\u001a\n',
      be32(13),
      'IHDR',
      be32(side),
      be32(side),
      [1, 0, 0, 0, 0],
      be32(0),
      be32(rows.length),
      'IDAT',
      [...rows],
    );
  }

  it('by its pixels, stated in the words', () => {
    const file = bomb(50_000);
    expect(file.length).toBeLessThan(20_000);
    const judged = judgePhoto(file.length, file);
    expect(judged).toEqual({ ok: false, error: { code: 'too-many-pixels', width: 50_000, height: 50_000 } });
    if (!judged.ok) expect(photoRefusalWords(judged.error)).toContain('50000 × 50000');
  });

  it('and at the bound itself it is not', () => {
    expect(judgePhoto(1000, bomb(7064)).ok).toBe(true);
    expect(7072 ** 2).toBeGreaterThan(MOST_PHOTO_PIXELS);
    expect(judgePhoto(1000, bomb(7072)).ok).toBe(false);
  });

  it('and so is a long thin one that no canvas holds', () => {
    const gif = bytesOf('GIF89a', [0x01, 0x00], [0xff, 0xff], [0, 0, 0]);
    expect(judgePhoto(gif.length, gif)).toMatchObject({ ok: false, error: { code: 'too-many-pixels' } });
  });

  it('the largest photo of a phone of 48 megapixels is taken', () => {
    // 8064 × 6048, as such phones write it: common practice.
    const gif = bytesOf('GIF89a', [0x80, 0x1f], [0xa0, 0x17], [0, 0, 0]);
    expect(judgePhoto(3_000_000, gif)).toMatchObject({ ok: true, value: { width: 8064, height: 6048 } });
  });

  it('and a file just past 30 MB is never said to have the size that is allowed', async () => {
    const judged = await judgePhotoFile(new Blob([new Uint8Array(bomb(800)), new Uint8Array(MOST_PHOTO_BYTES)]));
    if (judged.ok) throw new Error('It was not refused.');
    expect(photoRefusalWords(judged.error)).toMatch(/^That photo is 30\.1 MB\. The most is 30 MB\. /);
  });

  it('and a file past 30 MB, with its size in the words', () => {
    const judged = judgePhoto(MOST_PHOTO_BYTES + 1_048_576, bomb(800));
    expect(judged).toMatchObject({ ok: false, error: { code: 'too-many-bytes' } });
    if (!judged.ok) expect(photoRefusalWords(judged.error)).toContain('31 MB');
    expect(judgePhoto(MOST_PHOTO_BYTES, bomb(800)).ok).toBe(true);
  });
});
