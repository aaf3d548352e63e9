import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { changeSettings } from '@/app/_server/book/change-settings';
import { calendarFor } from '@/app/_server/feed/calendar-for';
import { changeFeed } from '@/app/_server/feed/change-feed';
import { feedSecret } from '@/app/_server/feed/feed-secret';
import { addJob } from '@/app/_server/jobs/add-job';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { reserve } from '@/app/_server/promises/reserve';
import { givePiece } from '@/app/_server/stock/give-piece';
import { moveStock } from '@/app/_server/stock/move-stock';
import { openContainer } from '@/app/_server/stock/open-container';
import { receivePieces } from '@/app/_server/stock/receive-pieces';
import { recordInspection } from '@/app/_server/stock/record-inspection';
import { recordReadings } from '@/app/_server/stock/record-readings';
import { strikeReading } from '@/app/_server/stock/strike-reading';
import { addStep } from '@/app/_server/timeline/add-step';
import { finishStep } from '@/app/_server/timeline/finish-step';
import { GET } from '@/app/feed/[secret]/route';
import { planned, readyToPour } from '@/tests/support/pour-of-a-test';
import { aSlab, stocked } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, NOW, refusedWith, type TestBook, TODAY } from '@/tests/support/test-book';

const ORIGIN = 'http://192.168.1.20:3000';

describe('the calendar feed', () => {
  let test: TestBook;
  const data = process.env.FLITCHBOOK_DATA;
  beforeAll(async () => {
    test = await freshBook();
    process.env.FLITCHBOOK_DATA = test.files.folder;
    // The route serves the book that was opened for this test.
    (globalThis as { flitchbookStore?: unknown }).flitchbookStore = Promise.resolve(test.book);
  });
  afterAll(async () => {
    delete (globalThis as { flitchbookStore?: unknown }).flitchbookStore;
    if (data === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = data;
    await test.remove();
  });

  const ask = (name: string) =>
    GET(new Request(`${ORIGIN}/feed/${name}`, { headers: { host: '192.168.1.20:3000' } }), {
      params: Promise.resolve({ secret: name }),
    });
  const secret = async () => (await feedSecret(test.book)) ?? '';
  const events = async () => {
    const text = (await calendarFor(test.book, { secret: await secret(), origin: ORIGIN, now: NOW })) ?? '';
    return new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((event) => ({
      uid: String(event.getFirstPropertyValue('uid')).split('@')[0],
      day: String(event.getFirstPropertyValue('dtstart')),
      summary: String(event.getFirstPropertyValue('summary')),
      url: String(event.getFirstPropertyValue('url')),
      sequence: Number(event.getFirstPropertyValue('sequence')),
    }));
  };
  const eventOf = async (uid: string) => (await events()).find((event) => event.uid === uid);

  it('makes one address of one press, however often it is sent, and is refused when the key says something else', async () => {
    const other = await freshBook();
    try {
      const press = by();
      const first = await changeFeed(other.book, press, { to: 'new' });
      const secretNow = await feedSecret(other.book);
      expect(await changeFeed(other.book, press, { to: 'new' })).toEqual({
        ok: true,
        value: { answer: must(first), replayed: true },
      });
      expect(await feedSecret(other.book)).toBe(secretNow);
      expect(refusedWith(await changeFeed(other.book, press, { to: 'none' }))).toBe('key-used-for-something-else');
      const end = by();
      expect(must(await changeFeed(other.book, end, { to: 'none' }))).toEqual({ had: true });
      expect(await changeFeed(other.book, end, { to: 'none' })).toMatchObject({ ok: true, value: { replayed: true } });
      // Two presses at once: the second sees what the first did.
      const both = await Promise.all([1, 2].map(() => changeFeed(other.book, by(), { to: 'new' })));
      expect(both.map((one) => must(one).had).sort()).toEqual([false, true]);
    } finally {
      await other.remove();
    }
  });

  it('is nowhere before somebody asks for it, and is not found with the empty secret either', async () => {
    expect(await feedSecret(test.book)).toBeNull();
    for (const name of ['', '.ics', 'null', 'null.ics', 'x'.repeat(5000)]) {
      const response = await ask(name);
      expect(response.status, name.slice(0, 20)).toBe(404);
      expect(await response.text()).toBe('Not found\n');
    }
    expect(refusedWith(await changeFeed(test.book, by(), { to: 'none' }))).toBe('no-feed');
  });

  it('answers to its secret alone, as text/calendar that nothing on the way may keep', async () => {
    must(await changeFeed(test.book, by(), { to: 'new' }));
    expect(await secret()).toMatch(/^[\w-]{43}$/);
    for (const name of [`${await secret()}.ics`, await secret()]) {
      const response = await ask(name);
      expect(response.status).toBe(200);
      expect(response.headers.get('Content-Type')).toBe('text/calendar; charset=utf-8');
      expect(response.headers.get('Cache-Control')).toBe('private, no-store');
      expect(await response.text()).toMatch(/^BEGIN:VCALENDAR\r\n/);
    }
  });

  it('is not found under the old address once it is renewed, with the same words as any other', async () => {
    const old = await secret();
    must(await changeFeed(test.book, by(), { to: 'new' }));
    expect(await secret()).not.toBe(old);
    const [gone, never] = await Promise.all([ask(`${old}.ics`), ask('nothing-like-it.ics')]);
    expect(gone.status).toBe(404);
    expect(await gone.text()).toBe(await never.text());
    expect([...gone.headers]).toEqual([...never.headers]);
    expect((await ask(`${await secret()}.ics`)).status).toBe(200);
    for (const almost of [(await secret()).slice(0, -1), `${await secret()}A`, (await secret()).toUpperCase()]) {
      expect((await ask(almost)).status, almost).toBe(404);
    }
  });

  it('stands with its secret in no entry, and what was done in words', async () => {
    const entries = await test.book.read.entry.findMany({ orderBy: { id: 'asc' } });
    expect(JSON.stringify(entries)).not.toContain(await secret());
    expect(entries.map(({ kind }) => kind)).toEqual(['book-begun', 'feed-changed', 'feed-changed']);
    expect(entries.map(({ reference }) => reference)).toEqual(['', 'made', 'renewed']);
  });

  it('has the steps of open jobs, and their due day; what is done or dropped leaves it', async () => {
    const { jobId } = must(
      await addJob(test.book, by(), {
        name: 'River desk, oak; "long"',
        purpose: 'client',
        client: 'Marlow',
        dayOfUse: day('2026-12-05'),
        note: '',
      }),
    );
    expect(await eventOf(`use-${jobId}`)).toMatchObject({
      day: '2026-12-05',
      summary: 'Day of use: River desk, oak; "long"',
      url: `${ORIGIN}/jobs/${jobId}`,
    });
    for (const [kind, when] of [
      ['lift', '2026-12-02'],
      ['demould', '2026-12-05'],
      ['delivery', '2026-12-24'],
    ] as const) {
      must(await addStep(test.book, by(), { jobId, kind, name: '', day: day(when), note: '' }));
    }
    await test.book.write((tx) => tx.job.update({ where: { id: jobId }, data: { dueOn: '2026-12-20' } }));
    const steps = await test.book.read.step.findMany({ orderBy: { id: 'asc' } });
    const lift = steps[0]?.id ?? 0;
    expect(await eventOf(`step-${lift}`)).toMatchObject({
      day: '2026-12-02',
      summary: 'Lift: River desk, oak; "long"',
    });
    expect(await eventOf(`due-${jobId}`)).toMatchObject({ day: '2026-12-20' });
    expect(await eventOf(`use-${jobId}`)).toBeUndefined();
    const before = (await eventOf(`step-${steps[1]?.id}`))?.sequence ?? 0;
    must(await finishStep(test.book, by(), { stepId: lift, doneOn: TODAY, reason: '' }));
    expect(await eventOf(`step-${lift}`)).toBeUndefined();
    expect((await eventOf(`step-${steps[1]?.id}`))?.sequence).toBeGreaterThan(before);
    await test.book.write((tx) => tx.job.update({ where: { id: jobId }, data: { state: 'dropped' } }));
    expect((await events()).filter(({ url }) => url.endsWith(`/jobs/${jobId}`))).toEqual([]);
  });

  it('has the last good day of what is opened or promised, and the retest of what rests on a test', async () => {
    const { book } = test;
    const { labels, lotId } = await stocked(book, { count: 3 });
    const [opened = '', promised = '', shut = ''] = labels;
    const idOf = async (label: string) => (await book.read.stock.findUniqueOrThrow({ where: { label } })).id;
    must(await openContainer(book, by(), { label: opened, opened: { on: TODAY, sureness: 'known' }, why: '' }));
    const { jobId } = must(
      await addJob(book, by(), {
        name: 'Bar top',
        purpose: 'client',
        client: '',
        dayOfUse: day('2026-12-10'),
        note: '',
      }),
    );
    must(await reserve(book, by(), { jobId, items: [{ label: promised, amount: 1000 }] }));
    for (const label of [opened, promised]) {
      expect(await eventOf(`limit-${await idOf(label)}`)).toMatchObject({
        day: '2027-01-10',
        url: `${ORIGIN}/containers/${label}`,
      });
    }
    expect(await eventOf(`limit-${await idOf(shut)}`)).toBeUndefined();
    must(
      await recordInspection(book, by(), {
        lotId,
        containerLabel: opened,
        kind: 'test-pour',
        madeOn: TODAY,
        passed: true,
        validUntil: day('2027-03-01'),
        method: '100 g in a cup',
        note: 'Hard and clear',
      }),
    );
    // The same matter under the same identifier: until when that tin may be trusted.
    expect(await eventOf(`limit-${await idOf(opened)}`)).toMatchObject({
      day: '2027-03-01',
      summary: expect.stringMatching(/^Test again: /),
    });
    expect((await events()).filter(({ url }) => url.endsWith(opened))).toHaveLength(1);
  });

  it('keeps the identifiers of a pour that is planned anew, lift by lift, and counts each change up', async () => {
    const { book } = test;
    const ready = await readyToPour(book);
    const ofJob = async () =>
      Object.fromEntries(
        (await events())
          .filter(({ url }) => url.endsWith(`/jobs/${ready.jobId}`))
          .map(({ uid = '', day: on, sequence }) => [uid, { on, sequence }]),
      );
    const first = await planned(book, ready);
    const before = await ofJob();
    const of = (what: string) => `pour-${first.pourId}-${what}`;
    expect(Object.keys(before)).toEqual(
      expect.arrayContaining([of('lift-1'), of('lift-2'), of('demould'), of('cure')]),
    );
    const anew = await planned(book, ready, { pourId: first.pourId, first: day('2026-12-07') });
    expect(anew.pourId).not.toBe(first.pourId);
    const after = await ofJob();
    expect(Object.keys(after).sort()).toEqual(Object.keys(before).sort());
    for (const [uid, { on, sequence }] of Object.entries(after)) {
      expect(on > (before[uid]?.on ?? ''), uid).toBe(true);
      expect(sequence, uid).toBeGreaterThan(before[uid]?.sequence ?? 0);
    }
    const third = await planned(book, ready, { pourId: anew.pourId, first: day('2026-12-14') });
    expect(Object.keys(await ofJob()).sort()).toEqual(Object.keys(before).sort());
    // Undone, the plan before stands again under the same identifiers, and nothing counts down.
    must(await reverseEntry(book, by(), { entryId: third.entryId, why: 'Too late' }));
    const back = await ofJob();
    for (const [uid, { on, sequence }] of Object.entries(back)) {
      expect(on, uid).toBe(after[uid]?.on);
      expect(sequence, uid).toBeGreaterThan(after[uid]?.sequence ?? 0);
    }
    // A second pour of the job is another matter.
    const second = await planned(book, ready, { name: 'Edge', first: day('2026-12-07') });
    expect(Object.keys(await ofJob())).toContain(`pour-${second.pourId}-lift-1`);
  });

  it('counts the day of both lots up when two are tried together', async () => {
    const { book } = test;
    const { a, b, jobId } = await readyToPour(book);
    const idOf = async (label: string) => (await book.read.stock.findUniqueOrThrow({ where: { label } })).id;
    for (const label of [a, b]) must(await reserve(book, by(), { jobId, items: [{ label, amount: 1000 }] }));
    const lotOf = async (label: string) =>
      (await book.read.container.findUniqueOrThrow({ where: { stockId: await idOf(label) } })).lotId;
    const sequences = async () =>
      Promise.all([a, b].map(async (label) => (await eventOf(`limit-${await idOf(label)}`))?.sequence ?? 0));
    const before = await sequences();
    must(
      await recordInspection(book, by(), {
        lotId: await lotOf(a),
        pairLotId: await lotOf(b),
        kind: 'test-pour',
        madeOn: TODAY,
        passed: false,
        method: '100 g in a cup',
        note: 'Soft',
      }),
    );
    const after = await sequences();
    expect(after[0]).toBeGreaterThan(before[0] ?? 0);
    expect(after[1]).toBe(after[0]);
  });

  it('asks for a reading of promised wood a week after the last, of drying wood by its room after a month', async () => {
    const { book } = test;
    const barn = must(await addPlace(book, by(), { name: 'Barn', kind: 'room' })).label;
    const rack = must(await addPlace(book, by(), { name: 'Rack', kind: 'rack', parentLabel: barn })).label;
    const put = async (mcTenths: number) => {
      const { pieces } = must(
        await receivePieces(book, by(), aSlab({ reading: { mcTenths, meter: 'pins', spot: '' } })),
      );
      must(await moveStock(book, by(), { labels: [pieces[0]?.label ?? ''], placeLabel: rack }));
      return pieces[0]?.label ?? '';
    };
    const dry = await put(90);
    await put(160);
    const job = await book.read.job.findFirstOrThrow({ where: { name: 'Bar top' } });
    must(await givePiece(book, by(), { label: dry, act: 'promise', jobId: job.id }));
    const { id } = await book.read.stock.findUniqueOrThrow({ where: { label: dry } });
    const room = await book.read.place.findUniqueOrThrow({ where: { label: barn } });
    expect(await eventOf(`reading-${id}`)).toMatchObject({ day: '2026-12-02', url: `${ORIGIN}/pieces/${dry}` });
    expect(await eventOf(`drying-${room.id}`)).toMatchObject({
      day: '2026-12-25',
      summary: 'Read the drying wood: Barn',
    });
  });

  it('counts up where a reading is struck out, though the day goes back, and where wood leaves a room', async () => {
    const { book } = test;
    const kiln = must(await addPlace(book, by(), { name: 'Kiln room', kind: 'room' })).label;
    const put = async (label: string, placeLabel: string) =>
      must(await moveStock(book, by(), { labels: [label], placeLabel }));
    const wet = async () =>
      must(await receivePieces(book, by(), aSlab({ reading: { mcTenths: 170, meter: 'pins', spot: '' } }))).pieces[0]
        ?.label ?? '';
    const [one, two] = [await wet(), await wet()];
    await put(one, kiln);
    await put(two, kiln);
    const room = await book.read.place.findUniqueOrThrow({ where: { label: kiln } });
    const event = () => eventOf(`drying-${room.id}`);
    const before = await event();
    const barn = await book.read.place.findFirstOrThrow({ where: { name: 'Barn' } });
    await put(two, barn.label);
    const left = await event();
    expect(left?.sequence).toBeGreaterThan(before?.sequence ?? 0);
    const read = { label: one, takenOn: TODAY, meter: 'pins', readings: [{ mcTenths: 180 }] };
    must(await recordReadings(book, by(), read));
    const again = await event();
    const reading = await book.read.reading.findFirstOrThrow({ orderBy: { id: 'desc' } });
    must(await strikeReading(book, by(), { readingId: reading.id, label: one, why: 'Wrong board' }));
    const struck = await event();
    expect(again?.sequence).toBeGreaterThan(left?.sequence ?? 0);
    expect(struck?.sequence).toBeGreaterThan(again?.sequence ?? 0);
  });

  it('has the look-again days of kept samples', async () => {
    const entry = await test.book.read.entry.findFirstOrThrow({ orderBy: { id: 'desc' } });
    const { id } = await test.book.write((tx) =>
      tx.sample.create({ data: { entryId: entry.id, name: 'Cup 3', madeOn: TODAY, lookOn: '2027-02-01' } }),
    );
    expect(await eventOf(`sample-${id}`)).toMatchObject({ day: '2027-02-01', summary: 'Look at the sample: Cup 3' });
  });

  it('names the workshop as it is called now, under identifiers that stay when it is called otherwise', async () => {
    const text = async () => calendarFor(test.book, { secret: await secret(), origin: ORIGIN, now: NOW });
    const uids = (of = '') => of.match(/^UID:.*$/gm);
    const before = await text();
    must(
      await changeSettings(test.book, by(), {
        name: 'Oak, ash & sons; joiners',
        timeZone: 'America/New_York',
        units: 'metric',
        dateOrder: 'day-first',
      }),
    );
    const after = await text();
    expect(after).toContain('\r\nNAME:Oak\\, ash & sons\\; joiners\r\n');
    expect(uids(after)).toEqual(uids(before));
    expect(uids(after)?.length).toBeGreaterThan(4);
    expect(new Set(uids(after)).size).toBe(uids(after)?.length);
  });

  it('ends when it is ended', async () => {
    const last = await secret();
    must(await changeFeed(test.book, by(), { to: 'none' }));
    expect(await feedSecret(test.book)).toBeNull();
    expect((await ask(`${last}.ics`)).status).toBe(404);
  });
});
