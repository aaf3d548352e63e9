import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBook } from '@/app/_server/book/read-book';
import { makeDemo } from '@/app/_server/demo/make-demo';
import { onHand } from '@/app/_server/find/on-hand';
import { listJobs } from '@/app/_server/jobs/read-jobs';
import { readParts } from '@/app/_server/jobs/read-parts';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { readTimeline } from '@/app/_server/timeline/read-timeline';
import { type OpenBook, openBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import { dateIn } from '@/shared/calendar/date-in';
import { toGtin14 } from '@/shared/scan-codes/to-gtin14';
import { judge } from '@/shared/shelf-life/judge';
import { CONDITIONS } from '@/shared/shelf-life/types/container-facts';
import { HOLD_STATES } from '@/shared/shelf-life/types/lot-facts';
import { judgePiece } from '@/shared/wood/judge-piece';
import { PIECE_FLAGS, PIECE_FORMS } from '@/shared/wood/piece';
import { runScript } from '@/tests/support/run-script';
import { emptyFiles } from '@/tests/support/test-book';

// A summer day and, in the second book, the night the clocks of the demo's time zone go back.
const SUMMER = new Date('2027-07-14T22:30:00Z');
const AUTUMN = new Date('2027-10-31T00:59:00Z');

/** Every page of a shelf. */
async function allOnHand(of: OpenBook, show: 'materials' | 'wood') {
  const page = await onHand(of, { show, query: '' });
  for (let { next } = page; next !== null; ) {
    const more = await onHand(of, { show, query: '', after: next });
    page.containers.push(...more.containers);
    page.pieces.push(...more.pieces);
    next = more.next;
  }
  return page;
}

describe('the demo workshop', () => {
  const folders: string[] = [];
  let book: OpenBook;
  let autumn: OpenBook;
  let photos = '';
  const data = process.env.FLITCHBOOK_DATA;

  beforeAll(async () => {
    const made: OpenBook[] = [];
    for (const now of [SUMMER, AUTUMN]) {
      const files = await emptyFiles();
      folders.push(files.folder);
      process.env.FLITCHBOOK_DATA = files.folder;
      photos = files.photos;
      const each = await openBook(files);
      await makeDemo(each, now);
      made.push(each);
    }
    const [first, second] = made;
    if (!first || !second) throw new Error('No demo was made.');
    book = first;
    autumn = second;
  });
  afterAll(async () => {
    if (data === undefined) delete process.env.FLITCHBOOK_DATA;
    else process.env.FLITCHBOOK_DATA = data;
    await book.close();
    await autumn.close();
    for (const folder of folders) fs.rmSync(folder, { recursive: true, force: true });
  });

  it('is marked as a demo and proves', async () => {
    expect(await readBook(book, SUMMER)).toMatchObject({ demo: true, today: '2027-07-14' });
    expect((await proveBook(book.read)).differences).toEqual([]);
    expect((await proveBook(autumn.read)).differences).toEqual([]);
  });

  it('was lived in: every entry lies before the day it is made, in the order of its number', async () => {
    const entries = await book.read.entry.findMany({ orderBy: { id: 'asc' }, select: { writtenAt: true } });
    const times = entries.map((each) => each.writtenAt.getTime());
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(Math.max(...times)).toBeLessThan(SUMMER.getTime());
    expect(times.length).toBeGreaterThan(150);
  });

  it('is the same every time but for its dates', async () => {
    const shape = async (each: OpenBook) => ({
      labels: (await each.read.stock.findMany({ orderBy: { id: 'asc' } })).map(
        ({ label, quantity, condition, hold }) => ({ label, quantity, condition, hold }),
      ),
      kinds: (await each.read.entry.findMany({ orderBy: { id: 'asc' } })).map(({ key, kind, who }) => ({
        key,
        kind,
        who,
      })),
      codes: await each.read.code.findMany({ orderBy: { id: 'asc' }, select: { value: true } }),
    });
    expect(await shape(autumn)).toEqual(await shape(book));
  });

  it.each([
    ['on the day it is made', () => ({ book, now: SUMMER })],
    ['in another season', () => ({ book: autumn, now: AUTUMN })],
  ])('shows every kind of answer %s', async (_, which) => {
    const { book: each, now } = which();
    const today = dateIn('Europe/London', now);
    const { containers } = await allOnHand(each, 'materials');
    const verdicts = containers.map((line) => judge({ ...line.candidate, purpose: 'client', dayOfUse: today, today }));
    const codes = new Set(verdicts.flatMap((verdict) => verdict.reasons.map((reason) => reason.code)));
    for (const code of [
      'on-hold',
      'recalled',
      'quarantine',
      'gelled',
      'skinned-through',
      'frozen-ruined',
      'past-limit',
      'date-unknown',
      'inspection-failed',
      'limit-near',
      'opened-day-guessed',
      'opened-life-unknown',
      'date-unconfirmed',
      'crystals',
      'haze',
      'settled',
      'darkened',
      'stored-out-of-range',
      'extended-by-inspection',
      'house-default',
    ] as const) {
      expect(codes, code).toContain(code);
    }
    expect(new Set(verdicts.map((verdict) => verdict.word))).toEqual(new Set(['use', 'care', 'stop']));
    const conditions = new Set(containers.flatMap((line) => line.candidate.container.conditions));
    expect(conditions).toEqual(new Set(CONDITIONS));
    const holds = new Set(containers.flatMap((line) => [line.candidate.lot.hold, line.candidate.container.hold]));
    expect(holds).toEqual(new Set(HOLD_STATES));
    const ahead = (await listJobs(each, 'open')).filter(
      (job) => job.dayOfUse > today && job.dayOfUse < addDays(today, 60),
    );
    expect(new Set(ahead.map((job) => job.purpose))).toEqual(new Set(['client', 'own', 'test']));
  });

  it('has wood of every form and with every mark, a flitch in order, and every kind of answer', async () => {
    const { pieces } = await allOnHand(book, 'wood');
    expect(new Set(pieces.map((each) => each.form))).toEqual(new Set(PIECE_FORMS));
    expect(new Set(pieces.flatMap((each) => each.facts.flags))).toEqual(new Set(PIECE_FLAGS));
    const codes = new Set(
      pieces.flatMap((each) =>
        judgePiece(each.facts, dateIn('Europe/London', SUMMER)).reasons.map((reason) => reason.code),
      ),
    );
    for (const code of [
      'held',
      'promised-elsewhere',
      'wet',
      'no-reading',
      'reading-old',
      'broken',
      'strapped',
      'checked',
      'twisted',
    ] as const) {
      expect(codes, code).toContain(code);
    }
    const flitch = pieces.filter((each) => each.flitch === 'Thornwick W').map((each) => each.flitchNumber);
    expect(flitch).toEqual([2, 3, 4, 5, 6]);
    expect(Math.max(...pieces.map((each) => each.readings.length))).toBeGreaterThanOrEqual(5);
  });

  it('shows everything of the wood rooms: shapes, marks, a pair, a cut family, a pack part-taken, sheets, readings, air', async () => {
    const { pieces } = await allOnHand(book, 'wood');
    const measured = pieces.filter((each) => each.shape?.source === 'stations');
    expect(measured.length).toBeGreaterThanOrEqual(8);
    // A grown edge is no straight line: the outline has more corners than three widths would give.
    for (const { shape } of measured) expect(shape?.outline.ring.length).toBeGreaterThan(12);
    const marks = pieces.map((each) => each.marks);
    expect(marks.some((each) => each.straps.length > 1)).toBe(true);
    expect(marks.some((each) => each.endChecks.length > 0)).toBe(true);
    const kinds = new Set(marks.flatMap((each) => each.defects.map((defect) => defect.kind)));
    for (const kind of ['knot', 'check', 'bark inclusion', 'break', 'punk', 'hole', 'stain'] as const) {
      expect(kinds, kind).toContain(kind);
    }
    const pair = pieces.filter((each) => each.pairedWith !== null);
    expect(pair.map((each) => each.pairedWith?.label).sort()).toEqual(pair.map((each) => each.label).sort());
    expect(pair).toHaveLength(2);

    const parts = pieces.filter((each) => each.shape?.source === 'cut');
    expect(parts.map((each) => each.form).sort()).toEqual(['offcut', 'slab']);
    const [cut] = await book.read.cut.findMany({ where: { kind: 'cut' } });
    expect(JSON.parse(cut?.scrap ?? '[]')).toHaveLength(1);

    const pack = pieces.find((each) => each.form === 'pack');
    const left = pack?.boards.filter((board) => !board.taken).length ?? 0;
    expect(left).toBeGreaterThan(0);
    expect(left).toBeLessThan(pack?.boards.length ?? 0);
    expect(pieces.filter((each) => each.species === pack?.species && each.form === 'board')).toHaveLength(5);

    const sheets = pieces.filter((each) => each.form === 'sheet');
    expect(new Set(sheets.map((each) => each.grain))).toEqual(new Set(['length', 'none']));
    expect(sheets.every((each) => each.faceA !== '' && each.faceB !== '')).toBe(true);
    expect(pieces.some((each) => each.cupNm !== null && each.bowNm !== null && each.twistNm !== null)).toBe(true);
    expect(pieces.some((each) => each.sapwoodNm !== null)).toBe(true);
    const placed = pieces.flatMap((each) => each.readings).filter((reading) => reading.alongNm !== null);
    expect(new Set(placed.map((reading) => reading.depthNm)).size).toBeGreaterThan(2);
    expect(await book.read.piece.count({ where: { sellerVolumeMm3: { not: null } } })).toBeGreaterThanOrEqual(2);
    expect(await book.read.roomLog.count()).toBeGreaterThan(40);
    expect(await book.read.roomSeason.count({ where: { removedById: null } })).toBe(4);
  });

  it('has a pull on a test pour, and one that was put back', async () => {
    const overridden = await book.read.entry.findMany({ where: { overrideInspectionId: { not: null } } });
    expect(overridden).toMatchObject([{ kind: 'pulled', verdict: 'stop' }]);
    const reversed = await book.read.entry.findMany({
      where: { reversesId: { not: null } },
      include: { reverses: true },
    });
    expect(reversed.map((each) => each.reverses?.kind)).toEqual(['pulled']);
  });

  it('keeps its photos as files beside the book', async () => {
    const rows = await autumn.read.photo.findMany();
    expect(rows.length).toBeGreaterThanOrEqual(4);
    for (const row of rows) expect(fs.statSync(path.join(photos, row.file)).size).toBe(row.bytes);
  });

  // GS1 General Specifications, table of GS1 prefixes: 952 is kept for demonstrations and examples of the GS1 system.
  it('uses only product codes that GS1 keeps for examples, with their check digits', async () => {
    const codes = (await book.read.code.findMany({ where: { productId: { not: null } } })).map((each) => each.value);
    expect(codes.length).toBeGreaterThan(15);
    for (const code of codes) {
      expect(code).toMatch(/^0952\d{10}$/);
      expect(toGtin14(code).ok, code).toBe(true);
    }
  });

  it('is made by its script in an empty folder, and refused, with words, where there is a book', async () => {
    const files = await emptyFiles();
    folders.push(files.folder);
    const made = await runScript('scripts/demo.ts', [], { FLITCHBOOK_DATA: files.folder });
    expect(made).toMatchObject({ code: 0, err: '' });
    const again = await runScript('scripts/demo.ts', [], { FLITCHBOOK_DATA: files.folder });
    expect(again.code).toBe(1);
    expect(again.err).toContain('already: Sallow Bank Workshop. Nothing was changed.');
  });

  it('oils the base of a table while its top cures, and judges each by its own part', async () => {
    const job = (await listJobs(book, 'open')).find(({ name }) => name === 'Pond coffee table');
    if (!job) throw new Error('There is no pond table.');
    const { steps, verdicts } = await readTimeline(book, job, dateIn('Europe/London', SUMMER));
    const parts = await readParts(book.read, job.id);
    const [top, base] = ['Pond top', 'Ash base'].map((name) => parts.find((part) => part.name === name)?.id);
    const demould = steps.find(({ kind, partId }) => kind === 'demould' && partId === top);
    const oiled = steps.filter(({ kind, partId }) => kind === 'coat' && partId === base);
    expect(oiled).toHaveLength(2);
    for (const { id, day: on } of oiled) {
      expect(on < (demould?.day ?? '')).toBe(true);
      const codes = verdicts.find(({ stepId }) => stepId === id)?.cautions.map(({ code }) => code);
      expect(codes).not.toContain('before-ready');
    }
  });
});
