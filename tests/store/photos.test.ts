import fs from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addSentPhoto } from '@/app/_server/stock/add-photo';
import { receivePhoto } from '@/app/_server/stock/receive-photo';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { withPhoto } from '@/app/_server/stock/with-photo';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { MOST_PHOTO_BYTES } from '@/shared/photos/photo-limits';
import { pngOfBlack, pngThatClaims } from '@/tests/support/png-that-claims';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

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
    expect(said.what).toBe('That photo is 30.1 MB; the most is 30 MB.');
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

  const aPiece = async () => must(await receivePieces(test.book, by(), aSlab())).pieces[0] ?? { stockId: 0 };
  const sent = async (format: 'png' | 'jpeg' = 'png') =>
    new File([new Uint8Array(await twoHalves(60, 40).toFormat(format).toBuffer())], 'butt.png', { type: 'image/png' });

  it('pressed twice with one key is one file and one entry', async () => {
    const { stockId } = await aPiece();
    const key = 'photo-pressed-twice';
    const press = async () => addSentPhoto(test.book, by(key), { stockId, photo: await sent(), caption: 'Butt end' });
    const before = kept().length;
    const first = must(await press());
    const again = await press();
    expect(again).toEqual({ ok: true, value: { answer: first, replayed: true } });
    expect(kept()).toHaveLength(before + 1);
    expect(kept()).toContain(first.file);
    expect(await test.book.read.photo.count({ where: { stockId } })).toBe(1);
  });

  it('leaves no file where what it belongs to is refused or fails', async () => {
    const { stockId } = await aPiece();
    const before = kept();
    const photo = await sent();
    expect(refusedWith(await addSentPhoto(test.book, by(), { stockId: 999_999, photo, caption: '' }))).toBe(
      'not-found',
    );
    const pour = { kind: 'test-pour', madeOn: TODAY, passed: true, method: '', note: '' } as const;
    const refusedPour = await withPhoto(photo, 'Test pour', (picture) =>
      recordInspection(test.book, by(), { ...pour, lotId: 999_999, photo: picture }),
    );
    expect(refusedWith(refusedPour)).toBe('not-found');
    const failed = withPhoto(photo, '', () => Promise.reject(new Error('The disk is full.')));
    await expect(failed).rejects.toThrow('The disk is full.');
    expect(kept()).toEqual(before);
    must(await addSentPhoto(test.book, by(), { stockId, photo, caption: '' }));
    expect(kept()).toHaveLength(before.length + 1);
  });

  it('sent again under a key that was used for something else takes nothing of the first away', async () => {
    const { stockId } = await aPiece();
    const key = 'photo-then-another';
    const { file } = must(await addSentPhoto(test.book, by(key), { stockId, photo: await sent(), caption: 'Face' }));
    const other = await addSentPhoto(test.book, by(key), { stockId, photo: await sent(), caption: 'Back' });
    expect(refusedWith(other)).toBe('key-used-for-something-else');
    expect(kept()).toContain(file);
  });

  it.each([
    [
      'a drawing',
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="10" height="10"><rect width="9" height="9"/></svg>'),
    ],
    ['a scan for print', () => twoHalves(40, 20).tiff().toBuffer()],
  ])('that a camera does not write is refused: %s', async (_, upload) => {
    await refused(typeof upload === 'function' ? await upload() : upload, 'photo-not-an-image');
  });

  it('of a GIF and an AVIF is taken', async () => {
    for (const upload of [await twoHalves(40, 20).gif().toBuffer(), await twoHalves(40, 20).avif().toBuffer()]) {
      expect((await receivePhoto(upload, '')).ok).toBe(true);
    }
  });

  it('in HEIC that cannot be opened here is told apart from what is no picture', async () => {
    const cut = await twoHalves(400, 200).avif().toBuffer();
    const { said } = await refused(cut.subarray(0, Math.floor(cut.length * 0.8)), 'photo-heic-unreadable');
    expect(said.what).toContain('HEIC');
    expect(said.todo).toContain('JPEG');
  });
});
