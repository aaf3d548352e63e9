import fs from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { type MeasureByPhoto, measureByPhoto } from '@/app/_server/shapes/measure-by-photo';
import { readShape } from '@/app/_server/shapes/read-shape';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import type { FourPixels } from '@/shared/outline/outline-from-photo';
import { type Camera, PHONE_CAMERA, photoOfSlab, SLAB, seenBy } from '@/tests/support/slab-photo';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook } from '@/tests/support/test-book';

/** The phone's camera, its picture made four times smaller so that it is quickly rendered. */
const CAMERA: Camera = { ...PHONE_CAMERA, focal: 750, width: 1000, down: 750 };
const SIZE = { width: CAMERA.width, height: CAMERA.down };
const at = (places: readonly { x: number; y: number }[]) => places.map((place) => seenBy(CAMERA, place));

describe('a slab measured from a photo', () => {
  let test: TestBook;
  let label: string;
  let picture: Buffer;
  const data = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
    label = must(await receivePieces(test.book, by(), aSlab())).pieces[0]?.label ?? '';
    picture = await photoOfSlab(CAMERA);
  });
  afterAll(async () => {
    if (data === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = data;
    await test.remove();
  });

  const fileOf = (content: Buffer, type = 'image/jpeg') => new File([new Uint8Array(content)], 'slab', { type });
  const asked = (more: Partial<MeasureByPhoto> = {}): MeasureByPhoto => ({
    label,
    photo: fileOf(picture),
    seen: SIZE,
    measuring: {
      reference: { kind: 'sheet', width: 420, height: 297 },
      marks: at(SLAB.sheet) as unknown as FourPixels,
      edge: at(SLAB.edge),
      gaps: [at(SLAB.gap)],
      fromOtherEnd: false,
    },
    why: '',
    ...more,
  });
  const kept = () => fs.readdirSync(test.files.photos, { recursive: true });
  const shapes = () => test.book.read.shape.count();
  const line = async () => {
    const found = await loadPiece(test.book.read, label);
    if (!found) throw new Error('The slab is gone.');
    return found;
  };

  it('has its outline within a millimetre, its length and widths follow, and the book holds', async () => {
    must(await measureByPhoto(test.book, by(), asked()));
    const { shape, lengthNm, ...widths } = await line();
    expect(shape).toMatchObject({ source: 'photo' });
    expect(shape?.outline.holes).toHaveLength(1);
    expect(Math.abs(Number(lengthNm) / 1e6 - 1800)).toBeLessThan(1);
    // Ends tapped a hair off square still have their width.
    expect(Number(widths.widthStartNm) / 1e6).toBeGreaterThan(580);
    expect(Number(widths.widthEndNm) / 1e6).toBeGreaterThan(580);
    const facts = await readShape(test.book, (await line()).stockId, 'Europe/London');
    expect(facts?.photoErrorUm).toBeGreaterThan(100);
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    const { why } = await test.book.read.entry.findFirstOrThrow({ where: { kind: 'piece-measured' } });
    expect(why).toMatch(
      /^from a photo, true to .+ at the sheet and .+ where it is furthest from it: .+ long, .+ wide\.$/,
    );
  });

  it('keeps the photo straightened: the sheet is square on it, the gap open, the wood where the outline is', async () => {
    const { stockId, shape } = await line();
    const facts = await readShape(test.book, stockId, 'Europe/London');
    const photo = facts?.photo;
    if (!photo || !shape) throw new Error('There is no photo.');
    const whole = sharp(path.join(test.files.photos, photo.file));
    const { data: raw, info } = await whole.raw().toBuffer({ resolveWithObject: true });
    const perMm = (info.width / (photo.right - photo.left)) * 1000;
    expect(((photo.top - photo.bottom) / 1000) * perMm).toBeCloseTo(info.height, -1);
    // The slab was laid with its own line along x; the chalk line of the photo is the same one, moved and hardly turned.
    const middle = (Math.min(...SLAB.edge.map(({ y }) => y)) + Math.max(...SLAB.edge.map(({ y }) => y))) / 2;
    const colour = (x: number, y: number) => {
      const [column, row] = [x - photo.left / 1000, photo.top / 1000 - (y - middle)].map((mm) =>
        Math.floor(mm * perMm),
      );
      const from = ((row ?? 0) * info.width + (column ?? 0)) * 3;
      return [...raw.subarray(from, from + 3)];
    };
    const isWhite = ([r = 0, g = 0, b = 0]: number[]) => Math.min(r, g, b) > 215;
    const isWood = ([r = 0, , b = 0]: number[]) => r - b > 60;
    for (const [dx, dy] of [
      [1, 1],
      [-1, 1],
      [1, -1],
      [-1, -1],
    ] as const) {
      const [x, y] = [910 + dx * 210, -1.5 + dy * 148.5];
      expect(isWhite(colour(x - dx * 12, y - dy * 12)), `inside the corner ${dx} ${dy}`).toBe(true);
      expect(isWood(colour(x + dx * 12, y + dy * 12)), `outside the corner ${dx} ${dy}`).toBe(true);
    }
    expect(isWood(colour(1340, 80)) || isWhite(colour(1340, 80))).toBe(false);
    expect(isWood(colour(200, 0)) && isWood(colour(1700, 0))).toBe(true);
  });

  it('measured again needs a reason, and leaves no file behind where it is refused', async () => {
    const [files, before] = [kept(), await shapes()];
    expect(refusedWith(await measureByPhoto(test.book, by(), asked({ why: ' ' })))).toBe('reason-needed');
    expect(refusedWith(await measureByPhoto(test.book, by(), asked({ label: 'S000000', why: 'x' })))).toBe('not-found');
    expect(kept()).toEqual(files);
    expect(await shapes()).toBe(before);
  });

  it('pressed twice with one key is one measuring and one file', async () => {
    const key = 'photo-measured-twice';
    const first = must(await measureByPhoto(test.book, by(key), asked({ why: 'Edge tapped closer' })));
    const [files, count] = [kept(), await shapes()];
    const again = await measureByPhoto(test.book, by(key), asked({ why: 'Edge tapped closer' }));
    expect(again).toEqual({ ok: true, value: { answer: first, replayed: true } });
    expect(kept()).toEqual(files);
    expect(await shapes()).toBe(count);
  });

  // Exif 2.32, table 6, Orientation 6: the 0th row is the visual right side. What is seen is what was tapped on.
  it('reads the photo the way it was held, and keeps nothing the camera wrote', async () => {
    const lying = await sharp(picture)
      .rotate(-90)
      .withExif({ IFD0: { Copyright: 'Ada Marlow' } })
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    expect((await sharp(lying).metadata()).width).toBe(SIZE.height);
    must(await measureByPhoto(test.book, by(), asked({ photo: fileOf(lying), why: 'Held upright' })));
    const { stockId } = await line();
    const { photo } = (await readShape(test.book, stockId, 'Europe/London')) ?? {};
    const file = fs.readFileSync(path.join(test.files.photos, photo?.file ?? ''));
    expect((await sharp(file).metadata()).exif).toBeUndefined();
    expect(file.includes('Ada Marlow')).toBe(false);
    const { dominant } = await sharp(file).stats();
    expect(dominant.r - dominant.b).toBeGreaterThan(60);
  });

  it.each([
    [
      'no picture',
      async () => fileOf(Buffer.from('A shopping list.'.repeat(90))),
      'photo-not-an-image',
      /not a picture/,
    ],
    [
      'a small copy',
      async () => fileOf(await sharp(picture).resize(400).toBuffer()),
      'photo-too-small',
      /400 × 300 pixels/,
    ],
    ['another photo', async () => fileOf(await sharp(picture).resize(900).toBuffer()), 'photo-is-another', /900 × 675/],
  ] as const)('%s is refused with its size stated, and nothing is kept', async (_, photo, code, says) => {
    const [files, before] = [kept(), await shapes()];
    const result = await measureByPhoto(test.book, by(), asked({ photo: await photo(), why: 'x' }));
    if (result.ok) throw new Error('It was not refused.');
    expect(result.error.code).toBe(code);
    expect(sayRefusal(result.error).what).toMatch(says);
    expect(kept()).toEqual(files);
    expect(await shapes()).toBe(before);
  });

  it('with crossed corners is refused in words before the photo is looked at', async () => {
    const [a, b, c, d] = asked().measuring.marks;
    const crossed = { ...asked().measuring, marks: [a, b, d, c] as FourPixels };
    const result = await measureByPhoto(test.book, by(), asked({ measuring: crossed, why: 'x' }));
    if (result.ok) throw new Error('It was not refused.');
    expect(result.error).toMatchObject({ code: 'photo-does-not-fit', facts: { why: 'bow-tie' } });
    expect(sayRefusal(result.error).what).toBe('These marks are crossed.');
  });
});
