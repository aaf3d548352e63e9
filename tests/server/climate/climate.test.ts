import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { airOf } from '@/app/_server/climate/air-of';
import { logAir } from '@/app/_server/climate/log-air';
import { airOfPlace } from '@/app/_server/climate/read-air';
import { removeSeason } from '@/app/_server/climate/remove-season';
import { roomPage } from '@/app/_server/climate/room-page';
import { setSeason } from '@/app/_server/climate/set-season';
import { history } from '@/app/_server/ledger/history';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { recordReadings } from '@/app/_server/stock/record-readings';
import { sayEntry } from '@/app/(shop)/_parts/history/say-entry';
import { aSlab } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const CONTEXT = { timeZone: 'UTC', today: TODAY, order: 'day-first', prefer: 'metric' } as const;
const on = (takenOn: string, tenthsC: number, humidityTenths: number) => ({
  takenOn: day(takenOn),
  tenthsC,
  humidityTenths,
});
const WINTER = { name: 'Heating', fromMonth: 10, tenthsC: 200, humidityTenths: 350 };
const SUMMER = { name: 'Summer', fromMonth: 5, tenthsC: 240, humidityTenths: 650 };

describe('the air of a room', () => {
  let test: TestBook;
  let room = { label: '', placeId: 0 };
  let rack = { label: '', placeId: 0 };
  let turn = 0;
  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(() => test.remove());
  beforeEach(async () => {
    const { book } = test;
    turn += 1;
    room = must(await addPlace(book, by(), { name: `Shop ${turn}`, kind: 'room' }));
    rack = must(await addPlace(book, by(), { name: 'Rack', kind: 'rack', parentLabel: room.label }));
  });
  const log = (label: string, ...lines: ReturnType<typeof on>[]) => logAir(test.book, by(), { label, lines });
  const now = (placeId: number) => airOf(test.book, placeId, TODAY);

  it('is not made up where nobody has noted any', async () => {
    expect(await now(rack.placeId)).toBeUndefined();
  });

  it('is the mean of the days noted in the last four weeks', async () => {
    must(await log(room.label, on('2026-10-01', 300, 900), on('2026-11-10', 200, 400), on('2026-11-20', 220, 500)));
    const air = await now(room.placeId);
    expect(air).toMatchObject({
      inherited: false,
      of: { label: room.label },
      air: { basis: 'log', days: 2, from: '2026-11-10', to: '2026-11-20', tenthsC: 210, humidityTenths: 450 },
    });
    expect(air?.emc.how).toMatchObject({ formula: 'emc', inputs: { 'temperature°C': 21, humidityPercent: 45 } });
  });

  it('forgets a log that was undone, and takes the same days again', async () => {
    must(await log(room.label, on('2026-11-20', 220, 500)));
    const [entry] = (await history(test.book, { placeId: room.placeId })).entries;
    expect(entry).toMatchObject({ kind: 'air-logged', canReverse: true });
    must(await reverseEntry(test.book, by(), { entryId: entry?.id ?? 0, why: 'The wrong room' }));
    expect(await now(room.placeId)).toBeUndefined();
    must(await log(room.label, on('2026-11-20', 220, 500)));
    expect(await now(room.placeId)).toMatchObject({ air: { tenthsC: 220 } });
  });

  it('is by its season where no log was kept of late, and round the turn of the year', async () => {
    must(await log(room.label, on('2026-10-01', 300, 900)));
    must(await setSeason(test.book, by(), { label: room.label, ...WINTER }));
    must(await setSeason(test.book, by(), { label: room.label, ...SUMMER }));
    expect((await now(room.placeId))?.air).toMatchObject({ basis: 'season', name: 'Heating', humidityTenths: 350 });
    const later = await airOf(test.book, room.placeId, day('2027-02-01'));
    expect(later?.air).toMatchObject({ basis: 'season', name: 'Heating' });
  });

  it('is that of the place around it where it has none of its own, and says so', async () => {
    must(await log(room.label, on('2026-11-20', 200, 400)));
    expect(await now(rack.placeId)).toMatchObject({ inherited: true, of: { label: room.label } });
    must(await log(rack.label, on('2026-11-21', 180, 500)));
    expect(await now(rack.placeId)).toMatchObject({ inherited: false, air: { humidityTenths: 500 } });
  });

  it('is that of the place around it where its own log is old', async () => {
    must(await log(rack.label, on('2026-06-01', 250, 700)));
    must(await log(room.label, on('2026-11-20', 200, 400)));
    expect(await now(rack.placeId)).toMatchObject({ inherited: true, of: { label: room.label } });
  });

  it('is put right by noting the day again; the same figures again change nothing', async () => {
    must(await log(room.label, on('2026-11-20', 200, 950)));
    must(await log(room.label, on('2026-11-20', 200, 450)));
    expect((await now(room.placeId))?.air.humidityTenths).toBe(450);
    expect(refusedWith(await log(room.label, on('2026-11-20', 200, 450)))).toBe('changes-nothing');
    must(await log(room.label, on('2026-11-20', 200, 950)));
    expect((await now(room.placeId))?.air.humidityTenths).toBe(950);
  });

  it('takes a paste again without writing what stands there', async () => {
    must(await log(room.label, on('2026-11-20', 200, 400), on('2026-11-21', 200, 410)));
    const again = must(await log(room.label, on('2026-11-20', 200, 400), on('2026-11-22', 200, 420)));
    expect(again).toEqual({ kept: 1, known: 1 });
    const known = await airOfPlace(test.book, { id: room.placeId }, TODAY);
    expect(known?.days.map((each) => each.on)).toEqual(['2026-11-20', '2026-11-21', '2026-11-22']);
  });

  it('refuses air that cannot be, a day to come, and a day twice in one paste', async () => {
    expect(refusedWith(await log(room.label, on('2026-11-20', 200, 1000)))).toBe('outside-range');
    expect(refusedWith(await log(room.label, on('2026-11-20', 801, 400)))).toBe('outside-range');
    expect(refusedWith(await log(room.label, on('2026-11-20', -301, 400)))).toBe('outside-range');
    expect(refusedWith(await log(room.label, on('2026-11-26', 200, 400)))).toBe('received-in-the-future');
    const twice = await log(room.label, on('2026-11-20', 200, 400), on('2026-11-20', 210, 400));
    expect(refusedWith(twice)).toBe('outside-range');
    expect(refusedWith(await log('P000000', on('2026-11-20', 200, 400)))).toBe('not-found');
    expect(await now(room.placeId)).toBeUndefined();
  });

  it('keeps one season a month; one that is taken off counts no more and stays in the history', async () => {
    const { book } = test;
    must(await setSeason(book, by(), { label: room.label, ...WINTER }));
    must(await setSeason(book, by(), { label: room.label, ...WINTER, humidityTenths: 300 }));
    const known = await airOfPlace(book, { id: room.placeId }, TODAY);
    expect(known?.seasons).toHaveLength(1);
    expect(known?.seasons[0]?.humidityTenths).toBe(300);
    const seasonId = known?.seasons[0]?.id ?? 0;
    must(await removeSeason(book, by(), { label: room.label, seasonId }));
    expect(await now(room.placeId)).toBeUndefined();
    expect(refusedWith(await removeSeason(book, by(), { label: room.label, seasonId }))).toBe('no-such-season');
    const told = await history(book, { placeId: room.placeId });
    expect(told.entries.map((entry) => sayEntry(entry, CONTEXT).what)[0]).toMatch(/Heating/);
  });

  it('shows the wood that stands in it, but not what stands in a place with air of its own', async () => {
    const { book } = test;
    const kiln = must(await addPlace(book, by(), { name: 'Kiln', kind: 'cabinet', parentLabel: room.label }));
    must(await log(room.label, on('2026-11-20', 200, 400)));
    must(await log(kiln.label, on('2026-11-20', 450, 300)));
    const labels: string[] = [];
    for (const placeLabel of [rack.label, kiln.label]) {
      const { pieces } = must(await receivePieces(book, by(), aSlab({ placeLabel })));
      const label = pieces[0]?.label ?? '';
      labels.push(label);
      must(await recordReadings(book, by(), { label, takenOn: TODAY, meter: 'pin', readings: [{ mcTenths: 140 }] }));
    }
    const page = await roomPage(book, room.placeId, TODAY);
    expect(page.wood.map(({ label }) => label)).toEqual([labels[0]]);
  });

  it('leaves a book that proves', async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
  });
});
