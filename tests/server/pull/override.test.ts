import fs from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { answerPull } from '@/app/_server/pull/answer-pull';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { recordTestPour } from '@/app/_server/pull/record-test-pour';
import { wasPulled } from '@/app/_server/pull/was-pulled';
import { loadContainer } from '@/app/_server/stock/load-container';
import { unwrap } from '@/shared/result/result';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const LATE = { purpose: 'client' as const, dayOfUse: day('2027-02-01'), asked: 400_000 };

describe('using a stopped container anyway', () => {
  let test: TestBook;
  let label = '';
  const folder = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
    label = (await stocked(test.book)).labels[0] ?? '';
  });
  afterAll(async () => {
    if (folder === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = folder;
    await test.remove();
  });

  const pour = (change: Partial<Parameters<typeof recordTestPour>[2]> = {}, key?: string) =>
    recordTestPour(test.book, by(key), { label, madeOn: TODAY, passed: true, method: '', note: 'Hard', ...change });
  const latest = async () => unwrap(await answerPull(test.book, { ...LATE, label }, NOW)).testPour;
  const take = (inspectionId: number, key?: string) =>
    pullContainer(test.book, by(key), { ...LATE, label, seen: 'stop', override: { reason: 'Agreed', inspectionId } });

  it('asks a test pour for a note or a photo', async () => {
    expect(refusedWith(await pour({ note: ' ' }))).toBe('override-needs-test-pour');
    expect(await latest()).toBeNull();
  });

  it('takes a photo in place of a note, and the same press twice is one test pour with one picture', async () => {
    const picture = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#888' } })
      .jpeg()
      .toBuffer();
    const photo = () => new File([new Uint8Array(picture)], 'cup.jpg', { type: 'image/jpeg' });
    const key = 'the-same-press';
    must(await pour({ note: '', photo: photo() }, key));
    const again = await pour({ note: '', photo: photo() }, key);
    expect(again.ok && again.value.replayed).toBe(true);
    expect(fs.readdirSync(path.join(test.files.folder, 'photos'))).toHaveLength(1);
    expect(await test.book.read.inspection.count()).toBe(1);
    expect((await latest())?.photo).toMatch(/^[0-9a-f]{32}\.jpg$/);
  });

  it('refuses what is no picture and records nothing', async () => {
    const photo = new File(['not a picture'], 'note.txt');
    expect(refusedWith(await pour({ photo }))).toBe('photo-not-an-image');
    expect(await test.book.read.inspection.count()).toBe(1);
  });

  it('does not rest on a pass that a later test pour took back', async () => {
    const passed = (await latest())?.id ?? 0;
    must(await pour({ passed: false, note: 'Soft at the bottom' }));
    expect(await latest()).toMatchObject({ passed: false, note: 'Soft at the bottom' });
    expect(refusedWith(await take(passed))).toBe('test-pour-not-passed');
    expect(refusedWith(await take((await latest())?.id ?? 0))).toBe('test-pour-not-passed');
  });

  it('writes it once on a newer pass, and answers the lost press with what it wrote', async () => {
    must(await pour({ note: 'Hard all through, second cup' }));
    const inspectionId = (await latest())?.id ?? 0;
    const key = 'press-without-answer';
    expect(await wasPulled(test.book, key)).toBeNull();
    const pulled = must(await take(inspectionId, key));
    expect(pulled).toMatchObject({ label, left: 2_100_000, overridden: true, opened: true });
    expect(await wasPulled(test.book, key)).toEqual(pulled);
    expect(must(await take(inspectionId, key))).toEqual(pulled);
    expect((await loadContainer(test.book.read, label))?.left).toBe(2_100_000);
  });

  it('names the entry that undoing reverses, which seals the container again', async () => {
    const pulled = await wasPulled(test.book, 'press-without-answer');
    must(await reverseEntry(test.book, by(), { entryId: pulled?.entryId ?? 0, why: 'Wrong container' }));
    const line = await loadContainer(test.book.read, label);
    expect([line?.left, line?.candidate.container.opened]).toEqual([2_500_000, undefined]);
  });

  it('does not take the answer of another act for a pull', async () => {
    expect(await wasPulled(test.book, 'the-same-press')).toBeNull();
  });
});
