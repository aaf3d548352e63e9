import { describe, expect, it } from 'vitest';
import { sayEntry } from '@/app/(shop)/_parts/history/say-entry';
import { coatsSchema } from '@/app/(shop)/jobs/[id]/finish/schema';
import { partRows, sayPart } from '@/app/(shop)/jobs/[id]/part-rows';
import { addPartSchema, finishStepSchema, moveStepsSchema, stageSchema } from '@/app/(shop)/jobs/[id]/schema';
import { finishSheetSchema } from '@/app/(shop)/products/finish-sheet-schema';
import { closedDaysSchema, closedWeekdaysSchema } from '@/app/(shop)/settings/closed-days-schema';
import { nanometres } from '@/shared/units/nanometres';
import { day } from '@/tests/support/day';

const METRIC = { prefer: 'metric' as const };
const fieldsOf = (result: { success: boolean; error?: { issues: { path: PropertyKey[] }[] } | undefined }) =>
  result.success ? [] : (result.error?.issues ?? []).map(({ path }) => path.join('.'));

describe('a part as it is typed', () => {
  const typed = {
    jobId: 1,
    kind: 'top',
    name: ' Top ',
    count: '2',
    shape: 'oval',
    lengthNm: '1800 mm',
    widthNm: '3\' 1/2"',
    thicknessNm: '',
    note: '',
  };
  it('reads its lengths in the maker’s own writing, an empty one as not known', () => {
    expect(addPartSchema(METRIC).parse(typed)).toMatchObject({
      name: 'Top',
      count: 2,
      lengthNm: 1_800_000_000,
      widthNm: 36.5 * 25_400_000,
      thicknessNm: null,
    });
  });
  it.each([
    [{ lengthNm: 'long' }, 'lengthNm'],
    [{ count: 'two' }, 'count'],
    [{ count: '0' }, 'count'],
    [{ shape: 'star' }, 'shape'],
    [{ kind: 'leg' }, 'kind'],
  ])('is refused %o', (bad, field) => {
    expect(fieldsOf(addPartSchema(METRIC).safeParse({ ...typed, ...bad }))).toEqual([field]);
  });
  it('is said and typed back in the units of the book', () => {
    const part = {
      id: 4,
      kind: 'top' as const,
      name: 'Top',
      count: 2,
      shape: 'round' as const,
      length: nanometres(620_000_000),
      width: nanometres(620_000_000),
      thickness: nanometres(32_000_000),
      note: 'chamfered',
    };
    expect(sayPart(part, 'metric')).toBe('2 of it, top, round, across 620 mm × 32 mm, chamfered');
    expect(partRows([part], 'metric')[0]?.typed).toMatchObject({
      lengthNm: '620 mm',
      thicknessNm: '32 mm',
      count: '2',
    });
    expect(
      sayPart(
        { ...part, kind: 'other', count: 1, shape: '', length: null, width: null, thickness: null, note: '' },
        'metric',
      ),
    ).toBe('other');
  });
});

describe('a plan of coats as it is typed', () => {
  const typed = {
    jobId: 1,
    productId: '5',
    partIds: [],
    faces: 2,
    area: '2.5 m²',
    coats: '3',
    coverage: '',
    loss: '10',
    firstDay: '2026-12-04',
  };
  it('reads area and coverage, each empty where the parts or the sheet say it', () => {
    expect(coatsSchema(METRIC).parse(typed)).toMatchObject({
      productId: 5,
      areaMm2: 2_500_000,
      coverageTenths: null,
      coats: 3,
      lossPercent: 10,
      firstDay: '2026-12-04',
    });
    expect(coatsSchema({ prefer: 'imperial' }).parse({ ...typed, area: '', coverage: '500' })).toMatchObject({
      areaMm2: null,
      coverageTenths: 123,
    });
  });
  it.each([
    [{ area: 'half the shop' }, 'area'],
    [{ coverage: '900' }, 'coverage'],
    [{ coats: '31' }, 'coats'],
    [{ loss: '91' }, 'loss'],
    [{ firstDay: '' }, 'firstDay'],
    [{ productId: '' }, 'productId'],
  ])('marks the field of what cannot be: %o', (bad, field) => {
    expect(fieldsOf(coatsSchema(METRIC).safeParse({ ...typed, ...bad }))).toEqual([field]);
  });
});

describe('other forms of a job, a finish and the settings', () => {
  it('take whole days and known stages only', () => {
    expect(finishStepSchema.safeParse({ stepId: 1, doneOn: '2026-11-31', reason: '' }).success).toBe(false);
    expect(stageSchema.safeParse({ jobId: 1, stage: 'lost', reason: '' }).success).toBe(false);
    expect(moveStepsSchema.safeParse({ jobId: 1, moves: [] }).success).toBe(false);
    expect(closedWeekdaysSchema.safeParse({ weekdays: [7] }).success).toBe(false);
    expect(closedDaysSchema.safeParse({ from: '2026-12-24', to: '', name: '' }).success).toBe(false);
  });
  it('keep what a sheet does not say as not said', () => {
    const typed = {
      productId: 5,
      from: 'sheet',
      coverageTenths: '24',
      coats: '',
      recoatFromHours: '12',
      recoatToHours: '',
      cureDays: '7',
      sandBetween: false,
    };
    expect(finishSheetSchema(METRIC).parse(typed)).toEqual({
      productId: 5,
      sheet: { from: 'sheet', coverageTenths: 240, recoatFromHours: 12, cureDays: 7, sandBetween: false },
    });
    expect(fieldsOf(finishSheetSchema(METRIC).safeParse({ ...typed, cureDays: 'a week' }))).toEqual(['cureDays']);
    expect(fieldsOf(finishSheetSchema(METRIC).safeParse({ ...typed, coverageTenths: '0' }))).toEqual([
      'coverageTenths',
    ]);
  });
});

describe('the acts of a job in its history', () => {
  const entry = (kind: string, why: string) =>
    sayEntry(
      {
        id: 1,
        kind,
        happenedAt: '2026-11-25T10:00:00Z',
        writtenAt: '2026-11-25T10:00:00Z',
        who: 'Ada',
        device: '',
        why,
        reference: '',
        verdict: null,
        overridden: null,
        job: { id: 1, name: 'Desk' },
        product: null,
        place: null,
        reverses: null,
        undidCut: null,
        reversedBy: null,
        canReverse: true,
        movements: [],
        moreMovements: 0,
        photos: [],
      },
      { timeZone: 'Europe/London', today: day('2026-11-25'), order: 'day-first', prefer: 'metric' },
    );
  it.each([
    ['steps-moved', 'Flatten: 2026-12-04 → 2026-12-08', 'Moved on the time line: Flatten: 4 Dec → 8 Dec'],
    [
      'step-done',
      'Flatten, 2026-11-25, before 2026-11-27: It is hard.',
      'Done: Flatten, 25 Nov, before 27 Nov: It is hard.',
    ],
    ['step-added', 'Flatten, 2027-01-04', 'Planned Flatten, 4 Jan 2027'],
    ['step-part-set', 'River: whole job → Top', 'Said which part it is for: River: whole job → Top'],
    ['job-stage-set', 'agreed → making', 'Moved the job on: agreed → making'],
    ['closed-days-added', 'Holiday, 2026-12-24 to 2027-01-02', 'Closed the workshop: Holiday, 24 Dec to 2 Jan 2027'],
    ['coats-planned', '2 × Oil: 2026-12-04, 2026-12-05', 'Planned coats: 2 × Oil: 4 Dec, 5 Dec'],
  ])('%s is said in words, its days as they are said everywhere', (kind, why, what) => {
    expect(entry(kind, why)).toMatchObject({ what, why: '' });
  });
  it('names the fields of a part that changed', () => {
    expect(entry('part-changed', 'Top: name: Top → Board; lengthNm: 1 m → 2 m').why).toContain('length: 1 m → 2 m');
  });
});
