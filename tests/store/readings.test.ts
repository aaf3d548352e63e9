import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { noteSawn } from '@/app/_server/stock/note-sawn';
import { noteWarp } from '@/app/_server/stock/note-warp';
import { readingsOfPiece } from '@/app/_server/stock/readings-of-piece';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { type RecordReadings, recordReadings } from '@/app/_server/stock/record-readings';
import { strikeReading } from '@/app/_server/stock/strike-reading';
import { judgePiece } from '@/shared/wood/judge-piece';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const MM = 1_000_000;
let test: TestBook;
beforeAll(async () => {
  test = await freshBook();
});
afterAll(() => test.remove());

async function slab() {
  const { label, stockId } = must(
    await receivePieces(test.book, by(), aSlab({ species: 'Black walnut', reading: undefined })),
  ).pieces[0] ?? { label: '', stockId: 0 };
  const line = async () => {
    const found = await loadPiece(test.book.read, label);
    if (!found) throw new Error('The slab is gone.');
    return found;
  };
  const read = (more: Partial<RecordReadings> = {}) =>
    recordReadings(test.book, by(), { label, takenOn: TODAY, meter: '', readings: [{ mcTenths: 120 }], ...more });
  return { label, stockId, line, read };
}

describe('readings of a slab', () => {
  it('are written in one round with their places, each in the book as it was shown', async () => {
    const { read, line } = await slab();
    const readings = [300, 900, 1500, 2100, 2700].map((along, at) => ({
      mcTenths: 90 + at,
      alongNm: along * MM,
      acrossNm: -40 * MM,
      depthNm: 20 * MM,
    }));
    must(await read({ meter: 'Pinless meter', meterKind: 'pinless', speciesSetting: 'walnut', readings }));
    const kept = (await line()).readings;
    expect(kept.map(({ mcTenths }) => mcTenths)).toEqual([94, 93, 92, 91, 90]);
    expect(kept[0]).toMatchObject({
      meterKind: 'pinless',
      speciesSetting: 'walnut',
      alongNm: 2700 * MM,
      acrossNm: -40 * MM,
      depthNm: 20 * MM,
      correctedTenths: null,
    });
  });

  it('keep the raw figure beside the corrected one, which is the one that counts', async () => {
    const { read, line } = await slab();
    // Wood Handbook, Chapter 13: half a point for every 10 °F (5.6 °C); 10 °C is 11.1 °C below the meter's own 21.1 °C.
    must(await read({ meterKind: 'pin', woodTenthsC: 100, readings: [{ mcTenths: 96 }] }));
    expect((await line()).readings[0]).toMatchObject({ mcTenths: 96, correctedTenths: 106, woodTenthsC: 100 });
    expect(judgePiece((await line()).facts, TODAY).reasons).toContainEqual(
      expect.objectContaining({ code: 'wet', mcTenths: 106 }),
    );
  });

  it('stand as shown where the meter corrects itself, is no pin meter, or the wood is as warm as the meter', async () => {
    const { read, line } = await slab();
    for (const more of [
      { meterKind: 'pin', correctsItself: true, woodTenthsC: 100 },
      { meterKind: 'pinless', woodTenthsC: 100 },
      { meterKind: 'pin', woodTenthsC: 211 },
    ] as const) {
      must(await read(more));
      expect((await line()).readings[0]).toMatchObject({ mcTenths: 120, correctedTenths: null });
    }
  });

  it('are refused as a whole where one cannot be, beside the field of its row', async () => {
    const { read, line } = await slab();
    const good = { mcTenths: 100 };
    const refused = async (bad: Partial<RecordReadings>, code: string, field: string) => {
      const result = await read(bad);
      expect(refusedWith(result)).toBe(code);
      expect(result.ok ? '' : result.error.field).toBe(field);
    };
    // Full of water, black walnut holds 131.2 %.
    await refused({ readings: [good, { mcTenths: 1313 }] }, 'wetter-than-possible', 'readings.1.moisture');
    await refused({ readings: [good, { mcTenths: 90, alongNm: 3001 * MM }] }, 'off-the-piece', 'readings.1.along');
    await refused({ readings: [{ mcTenths: 90, depthNm: 59 * MM }] }, 'off-the-piece', 'readings.0.depth');
    await refused({ readings: [] }, 'outside-range', 'readings.0.moisture');
    await refused({ meterKind: 'pin', woodTenthsC: 600 }, 'outside-range', 'woodTemperature');
    expect((await line()).readings).toEqual([]);
    must(await read({ readings: [{ mcTenths: 1312, alongNm: 3000 * MM, depthNm: 58 * MM }] }));
  });

  it('are struck out by an entry that says why; they stay in the table and count for nothing', async () => {
    const { label, stockId, read, line } = await slab();
    must(await read({ readings: [{ mcTenths: 480 }, { mcTenths: 88 }] }));
    const wrong = (await readingsOfPiece(test.book, stockId)).find(({ mcTenths }) => mcTenths === 480);
    const strike = { label, readingId: wrong?.id ?? 0, why: 'Meter set to another wood' };
    expect(refusedWith(await strikeReading(test.book, by(), { ...strike, why: ' ' }))).toBe('reason-needed');
    expect(refusedWith(await strikeReading(test.book, by(), { ...strike, readingId: 999_999 }))).toBe('not-found');
    must(await strikeReading(test.book, by(), strike));
    expect((await line()).readings.map(({ mcTenths }) => mcTenths)).toEqual([88]);
    expect((await line()).facts.readings).toHaveLength(1);
    const all = await readingsOfPiece(test.book, stockId);
    expect(all.map(({ mcTenths, struck }) => [mcTenths, struck !== null])).toEqual([
      [88, false],
      [480, true],
    ]);
    expect(all[1]?.struck).toContain('Meter set to another wood');
    expect(refusedWith(await strikeReading(test.book, by(), strike))).toBe('reading-gone');
    expect(await test.book.read.reading.count({ where: { pieceId: stockId } })).toBe(2);
    // Struck by mistake: its entry reversed, it counts again, and can be struck another time.
    const { entries } = await history(test.book, { stockId });
    expect(entries[0]).toMatchObject({ kind: 'reading-struck', canReverse: true });
    must(await reverseEntry(test.book, by(), { entryId: entries[0]?.id ?? 0, why: 'It was right' }));
    expect((await line()).readings.map(({ mcTenths }) => mcTenths).sort()).toEqual([480, 88]);
    must(await strikeReading(test.book, by(), strike));
    expect((await line()).readings.map(({ mcTenths }) => mcTenths)).toEqual([88]);
  });
});

describe('how a piece lies and was sawn', () => {
  it('is kept with a line of its own in the history, and not written twice', async () => {
    const { label, stockId, line } = await slab();
    const warp = { label, cupNm: 4 * MM, bowNm: null, twistNm: 0 };
    must(await noteWarp(test.book, by(), warp));
    must(await noteSawn(test.book, by(), { label, sawn: 'quarter' }));
    expect(await line()).toMatchObject({ cupNm: 4 * MM, bowNm: null, twistNm: 0, sawn: 'quarter' });
    expect(refusedWith(await noteWarp(test.book, by(), warp))).toBe('changes-nothing');
    expect(refusedWith(await noteSawn(test.book, by(), { label, sawn: 'quarter' }))).toBe('changes-nothing');
    expect(refusedWith(await noteWarp(test.book, by(), { ...warp, bowNm: 501 * MM }))).toBe('outside-range');
    const { entries } = await history(test.book, { stockId });
    expect(entries.map(({ kind }) => kind).slice(0, 2)).toEqual(['sawn-noted', 'warp-noted']);
    expect((await proveBook(test.book.read)).differences).toEqual([]);
  });
});
