import fs from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addPhoto } from '@/app/_server/stock/add-photo';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { MOST_PHOTO_BYTES } from '@/shared/photos/photo-limits';
import { pngOfBlack, pngThatClaims } from '@/tests/support/png-that-claims';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, type TestBook } from '@/tests/support/test-book';

const RED = { r: 200, g: 20, b: 20 };
const BLUE = { r: 20, g: 20, b: 200 };

/** Red on its left half, blue on its right. */
const twoHalves = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: RED } }).composite([
    { input: { create: { width: width / 2, height, channels: 3, background: BLUE } }, left: width / 2, top: 0 },
  ]);

describe('a photo that comes in', () => {
  let test: TestBook;
  const data = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
  });
  afterAll(async () => {
    if (data === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = data;
    await test.remove();
  });

  const kept = () => fs.readdirSync(test.files.photos);
  async function refused(upload: Buffer, code: string) {
    const before = kept();
    const began = performance.now();
    const result = await receivePhoto(upload, 'x');
    if (result.ok) throw new Error('It was not refused.');
    expect(result.error).toMatchObject({ code, field: 'photo' });
    expect(kept()).toEqual(before);
    return { error: result.error, said: sayRefusal(result.error), ms: performance.now() - began };
  }

  it.each([
    ['nothing at all', Buffer.alloc(0)],
    ['a text', Buffer.from('This is a shopping list.'.repeat(50))],
    ['a web page', Buffer.from('<!doctype html><script>alert(1)</script>')],
    ['the beginning of a PNG', pngThatClaims(10, 10).subarray(0, 20)],
    ['a PDF', Buffer.from('%PDF-1.7\n1 0 obj\n<<>>\nendobj\n')],
    ['zeros', Buffer.alloc(4096)],
  ])('that is no picture: %s', async (_, upload) => {
    const { said } = await refused(upload, 'photo-not-an-image');
    expect(said.what).toBe('That file is not a picture this program can read.');
  });

  it.each(['jpeg', 'png', 'webp'] as const)('that was cut short: %s', async (format) => {
    const noise = Buffer.alloc(400 * 300 * 3);
    for (let at = 0; at < noise.length; at += 1) noise[at] = (at * 2_654_435_761) >>> 24;
    const whole = await sharp(noise, { raw: { width: 400, height: 300, channels: 3 } })
      .toFormat(format)
      .toBuffer();
    await refused(whole.subarray(0, Math.floor(whole.length / 2)), 'photo-not-an-image');
  });

  it('that claims to be huge is refused by its header, before it is unpacked, and its size is said', async () => {
    const { said, ms, error } = await refused(pngThatClaims(30_000, 30_000), 'photo-too-many-pixels');
    expect(error.facts).toEqual({ megapixels: 900, most: 50 });
    expect(said.what).toBe('That picture would unpack to 900 megapixels; the most is 50.');
    expect(ms).toBeLessThan(500);
  });

  it('that really unpacks from kilobytes to hundreds of megabytes is refused as quickly', async () => {
    const bomb = pngOfBlack(12_000, 9_000);
    expect((await sharp(pngOfBlack(1200, 900)).stats()).isOpaque).toBe(true);
    expect(bomb.length).toBeLessThan(20_000);
    const { said, ms } = await refused(bomb, 'photo-too-many-pixels');
    expect(said.what).toContain('108 megapixels');
    expect(ms).toBeLessThan(500);
  });

  it('that is too many megabytes is refused without being looked at, and its size is said', async () => {
    const { said } = await refused(Buffer.alloc(MOST_PHOTO_BYTES + 1), 'photo-too-large');
    expect(said.what).toBe('That photo is 31 MB; the most is 30 MB.');
  });

  it('is stripped of what the camera wrote into it: place, owner, time', async () => {
    const upload = await twoHalves(400, 200)
      .jpeg()
      .withExif({
        IFD0: { Copyright: 'Ada Marlow', Model: 'Pocket 7', DateTime: '2026:11:25 15:00:00' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '0/1 7/1 0/1' },
      })
      .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><owner>Ada Marlow</owner></x:xmpmeta>')
      .toBuffer();
    expect(upload.includes('Ada Marlow')).toBe(true);
    expect((await sharp(upload).metadata()).exif).toBeDefined();
    const result = await receivePhoto(upload, 'Slab');
    if (!result.ok) throw new Error(result.error.code);
    const file = fs.readFileSync(path.join(test.files.photos, result.value.file));
    const head = await sharp(file).metadata();
    for (const what of ['exif', 'xmp', 'iptc', 'orientation'] as const) expect(head[what], what).toBeUndefined();
    for (const word of ['Ada Marlow', 'Pocket 7', 'GPS', '2026:11:25']) expect(file.includes(word), word).toBe(false);
  });

  // Exif 2.32, table 6, Orientation: 6 means the 0th row is the visual right side, so the picture is turned 90° clockwise.
  it('stands the way it was held', async () => {
    const upload = await twoHalves(400, 200).jpeg({ quality: 100 }).withMetadata({ orientation: 6 }).toBuffer();
    const result = await receivePhoto(upload, '');
    if (!result.ok) throw new Error(result.error.code);
    expect(result.value).toMatchObject({ width: 200, height: 400 });
    const { data: raw, info } = await sharp(path.join(test.files.photos, result.value.file))
      .raw()
      .toBuffer({ resolveWithObject: true });
    const at = (x: number, y: number) => [...raw.subarray((y * info.width + x) * info.channels).subarray(0, 3)];
    const [topRed = 0, , topBlue = 0] = at(100, 40);
    const [lowRed = 0, , lowBlue = 0] = at(100, 360);
    expect(topRed).toBeGreaterThan(topBlue);
    expect(lowBlue).toBeGreaterThan(lowRed);
  });

  it('is brought to at most 2048 px a side, never enlarged, and kept as it is said', async () => {
    const large = await receivePhoto(await twoHalves(4000, 1000).png().toBuffer(), ' A caption ');
    const small = await receivePhoto(await twoHalves(40, 20).webp().toBuffer(), 'x'.repeat(500));
    if (!large.ok || !small.ok) throw new Error('It was refused.');
    expect(large.value).toMatchObject({ width: 2048, height: 512, caption: 'A caption' });
    expect(small.value).toMatchObject({ width: 40, height: 20 });
    expect(small.value.caption).toHaveLength(200);
    for (const { file, width, height, bytes } of [large.value, small.value]) {
      const full = path.join(test.files.photos, file);
      expect(fs.statSync(full).size).toBe(bytes);
      expect(await sharp(full).metadata()).toMatchObject({ format: 'jpeg', width, height });
    }
    expect(kept().filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('pressed twice with one key is one file and one entry', async () => {
    const upload = await twoHalves(60, 40).png().toBuffer();
    const { stockId } = must(await receivePieces(test.book, by(), aSlab())).pieces[0] ?? { stockId: 0 };
    const key = 'photo-pressed-twice';
    const press = async () => {
      const photo = await receivePhoto(upload, 'Butt end', key);
      if (!photo.ok) throw new Error(photo.error.code);
      return addPhoto(test.book, by(key), { stockId, photo: photo.value });
    };
    const before = kept().length;
    must(await press());
    const again = await press();
    expect(again.ok && again.value.replayed).toBe(true);
    expect(kept()).toHaveLength(before + 1);
    expect(await test.book.read.photo.count({ where: { stockId } })).toBe(1);
  });
});
