import { describe, expect, it } from 'vitest';
import type { BookHead } from '@/app/_server/book/read-book';
import { joinNeeds } from '@/app/_server/needs/join-needs';
import type { PromiseCurve } from '@/app/_server/needs/promise-curves';
import type { StandingNeed } from '@/app/_server/needs/stand-needs';
import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { sayBroken } from '@/app/(shop)/_parts/acts/say-broken';
import { curveView, heightOf } from '@/app/(shop)/jobs/[id]/needs/curve-view';
import { needView } from '@/app/(shop)/jobs/[id]/needs/need-view';
import { sayCost, sayNeed, sayPackages } from '@/app/(shop)/jobs/[id]/needs/say-need';
import { sayStand } from '@/app/(shop)/jobs/[id]/needs/say-stand';
import { addNeedSchema } from '@/app/(shop)/jobs/[id]/needs/schema';
import { NOTHING_TYPED, typedNeed } from '@/app/(shop)/jobs/[id]/needs/typed-need';
import { readAsked } from '@/app/(shop)/on-hand/arriving/read-asked';
import { addArrivingSchema } from '@/app/(shop)/on-hand/arriving/schema';
import { unwrap } from '@/shared/result/result';
import { readCurrency } from '@/shared/units/currency';
import { minorUnits } from '@/shared/units/minor-units';
import { day } from '@/tests/support/day';

const TODAY = day('2026-11-25');
const USD = unwrap(readCurrency('USD'));
const HEAD: BookHead = {
  name: 'Shop',
  timeZone: 'America/New_York',
  units: 'metric',
  currency: 'USD',
  dateOrder: 'day-first',
  demo: false,
  revision: 1,
  today: TODAY,
};
const TYPING = { today: TODAY, order: 'day-first', prefer: 'metric', currency: USD } as const;

const facts = (change: Partial<NeedFacts> = {}): NeedFacts => ({
  id: 1,
  jobId: 1,
  job: 'Desk',
  purpose: 'client',
  firm: true,
  kind: 'material',
  on: day('2026-12-12'),
  goodTo: day('2026-12-12'),
  step: null,
  stepId: null,
  stepDone: false,
  liftId: null,
  liftPoured: false,
  part: null,
  partId: null,
  surface: '',
  note: '',
  unit: 'mg',
  amount: 2_400_000,
  product: { id: 3, name: 'Hardwax oil' },
  system: null,
  wood: null,
  ...change,
});
const money = (minor: number, known = true) => ({ minor: minorUnits(minor), known });
const standing = (change: Partial<StandingNeed['standing']> = {}, need = facts(), used = 0): StandingNeed => ({
  need,
  used,
  lots: [],
  standing: {
    reserved: [],
    failing: [],
    have: [],
    elsewhere: [],
    arriving: [],
    short: 0,
    lotsMixed: false,
    uncounted: [],
    ...change,
  },
  buy: undefined,
  cost: { inHand: money(0), toCome: money(0), atRisk: money(0) },
});
const part = (label: string, amount: number) => ({ stockId: amount, label, amount, stockAmount: amount });
const JOBS = new Map([[2, { name: 'River table', day: day('2026-12-20') }]]);
const view = (...needs: StandingNeed[]) => {
  const [joined] = joinNeeds(needs);
  if (!joined) throw new Error('Nothing is needed.');
  return needView(joined, JOBS, HEAD);
};

describe('a need in words', () => {
  it('has a row for each part of it, with where it is, and says what is still open', () => {
    const seen = view(
      standing({
        reserved: [part('CAAAAAA', 1_000_000)],
        have: [part('CBBBBBB', 400_000)],
        elsewhere: [{ jobId: 2, amount: 500_000, stockId: 9 }],
        arriving: [{ id: 1, amount: 500_000, on: day('2026-12-01') }],
        short: 500_000,
      }),
    );
    expect(seen.rows.map((row) => [row.term, row.amount, row.says])).toEqual([
      ['Promised to this job', '1 kg', ''],
      ['Have, free', '400 g', ''],
      ['Arriving in time', '500 g', '500 g on 1 Dec'],
      ['Short', '500 g', ''],
      ['Reserved for another', '500 g', '500 g for River table, 20 Dec'],
    ]);
    expect(seen).toMatchObject({
      amount: '2.4 kg',
      name: 'Hardwax oil',
      word: 'short',
      state: '500 g short',
      hasFree: true,
    });
    expect(seen.held).toEqual([{ label: 'CAAAAAA', needId: 1 }]);
  });

  it.each([
    ['kept', 'Promised', standing({ reserved: [part('CAAAAAA', 2_400_000)] })],
    ['done', 'Used', standing({}, facts(), 2_400_000)],
    ['free', 'On hand, not promised', standing({ have: [part('CAAAAAA', 2_400_000)] })],
    ['coming', 'Waits for an order', standing({ arriving: [{ id: 1, amount: 2_400_000, on: TODAY }] })],
  ])('is %s: %s', (word, state, each) => {
    expect(view(each)).toMatchObject({ word, state });
  });

  it('of one thing on several days is one card, its days told apart and its name not said again', () => {
    const coat = (id: number) =>
      facts({ id, amount: 100_000, step: `Hardwax oil, coat ${id}`, surface: 'Hardwax oil on Top', part: 'Top' });
    const seen = view(standing({ short: 100_000 }, coat(1)), standing({ short: 100_000 }, coat(2)));
    expect(seen.forWhat).toEqual(['100 g on 12 Dec, coat 1, Top', '100 g on 12 Dec, coat 2, Top']);
    expect(seen.amount).toBe('200 g');
    expect(seen.needs.map((each) => each.id)).toEqual([1, 2]);
    // The first of two coats has to be good to the last, until it is done.
    const ahead = (change = {}) => view(standing({}, { ...coat(1), goodTo: day('2026-12-14'), ...change })).forWhat;
    expect(ahead()).toEqual(['12 Dec, good to 14 Dec, coat 1, Top']);
    expect(ahead({ stepDone: true })).toEqual(['12 Dec, coat 1, Top']);
  });

  it('of wood says its form, how many, and the least sizes', () => {
    const wood = { species: 'Walnut', form: 'board', lengthNm: 600_000_000, widthNm: null, thicknessNm: 25_000_000 };
    const need = facts({ kind: 'wood', product: null, unit: 'piece', amount: 3, wood });
    expect(sayNeed(need, 'metric')).toEqual({
      amount: '3',
      name: 'Walnut boards',
      size: 'At least 600 mm long, 25 mm thick',
    });
    const any = facts({
      kind: 'wood',
      product: null,
      unit: 'piece',
      amount: 1,
      wood: { ...wood, species: '', form: '' },
    });
    expect(sayNeed(any, 'metric').name).toBe('piece of any wood');
    expect(typedNeed(need, 'metric')).toMatchObject({ kind: 'wood', length: '600 mm', width: '', count: '3' });
  });

  it('all of a job in one sentence', () => {
    const of = (...words: Parameters<typeof sayStand>[0][number]['word'][]) =>
      sayStand(words.map((word) => ({ word })));
    expect(of('short', 'short', 'free', 'kept')).toBe(
      'Of 4 needs, 2 are short, 1 is on hand and not promised, 1 is promised or used.',
    );
    expect(of('coming')).toBe('Of 1 need, 1 waits for an order.');
    expect(of('kept', 'done')).toBe('Everything it needs is promised to it.');
    expect(of('done')).toBe('All of it was used.');
  });

  it('money that is not known whole is not called nothing', () => {
    expect(sayCost(money(1250), USD)).toBe('$12.50');
    expect(sayCost(money(0), USD)).toBe('nothing');
    expect(sayCost(money(1250, false), USD)).toBe('$12.50 and more');
    expect(sayCost(money(0, false), USD)).toBe('not known');
  });

  it('packages by their sizes, wood by the piece', () => {
    const packs = [
      { size: 2_500_000, count: 3 },
      { size: 500_000, count: 1 },
    ];
    expect(sayPackages({ packs, amount: 0 }, 'mg', 'metric')).toBe('3 × 2.5 kg and 1 × 500 g');
    expect(sayPackages({ packs: [{ size: 1, count: 1 }], amount: 1 }, 'piece', 'metric')).toBe('1 piece');
  });
});

describe('the curve of what can be promised', () => {
  const curve = (change: Partial<PromiseCurve> = {}): PromiseCurve => ({
    key: 'k',
    name: 'Hardwax oil',
    unit: 'mg',
    steps: [
      { from: TODAY, good: 3_000_000, promised: 500_000, kept: 500_000, free: 2_000_000, reasons: [{ code: 'today' }] },
      {
        from: day('2026-12-11'),
        good: 1_000_000,
        promised: 0,
        kept: 0,
        free: 1_000_000,
        reasons: [{ code: 'ends', id: '1', words: 'CAAAAAA', lastGoodDay: day('2026-12-10'), amount: 2_000_000 }],
      },
    ],
    asks: [{ on: day('2026-12-12'), goodTo: day('2026-12-12'), amount: 2_400_000, free: 1_000_000 }],
    others: [],
    ...change,
  });

  it('says what can be promised, from when it changes, why, and whether what is wanted is there', () => {
    const seen = curveView(curve(), HEAD);
    expect(seen.says).toBe(
      'Hardwax oil: 2 kg can be promised today, 1 kg from 11 Dec. 2.4 kg wanted on 12 Dec: only 1 kg is free by then.',
    );
    expect(seen.table.map((row) => [row.from, row.free, row.why])).toEqual([
      ['25 Nov', '2 kg', 'Today'],
      ['11 Dec', '1 kg', 'C-AAAAAA was good to 10 Dec, 2 kg'],
    ]);
    expect(seen.asks).toMatchObject([{ met: false }]);
    const enough = curveView(curve({ asks: [{ on: TODAY, goodTo: TODAY, amount: 2_000_000, free: 2_000_000 }] }), HEAD);
    expect(enough.asks).toMatchObject([{ met: true, says: '2 kg wanted on 25 Nov: it is free.' }]);
  });

  it('draws what is for the lifts of one pour on the day of the last, as free as what is good to it', () => {
    const lifts = [day('2026-11-30'), day('2026-12-03')].map((on) => ({
      on,
      goodTo: day('2026-12-03'),
      amount: 600_000,
      free: 1_000_000,
    }));
    expect(curveView(curve({ asks: lifts }), HEAD).asks).toMatchObject([
      { on: '2026-12-03', met: false, says: '1.2 kg wanted on 3 Dec: only 1 kg is free by then.' },
    ]);
  });

  it('is drawn from the top of what is there to nothing at the foot, and where nothing is, along the foot', () => {
    const seen = curveView(curve(), HEAD);
    expect(heightOf(seen)(0)).toBe(96);
    expect(heightOf(seen)(seen.top)).toBe(8);
    expect(heightOf({ top: 0 })(0)).toBe(96);
  });
});

describe('forms of needs and orders', () => {
  const typed = { ...NOTHING_TYPED, productId: 3, systemId: undefined, stepId: undefined, partId: null, jobId: 1 };
  const issues = (result: { success: boolean; error?: { issues: { path: PropertyKey[] }[] } | undefined }) =>
    result.error?.issues.map((issue) => issue.path.join('.')) ?? [];

  it('read what was typed in the workshop’s units', () => {
    expect(addNeedSchema(TYPING).parse({ ...typed, amount: '2.4 kg' })).toMatchObject({
      kind: 'product',
      productId: 3,
      amount: 2_400_000,
    });
    expect(addNeedSchema(TYPING).parse({ ...typed, kind: 'wood', length: '1.8 m', count: '2' })).toMatchObject({
      kind: 'wood',
      lengthNm: 1_800_000_000,
      count: 2,
    });
  });

  it('say beside each field what is missing', () => {
    expect(issues(addNeedSchema(TYPING).safeParse({ ...typed, productId: undefined }))).toEqual([
      'productId',
      'amount',
    ]);
    expect(issues(addNeedSchema(TYPING).safeParse({ ...typed, kind: 'part', amount: '0 g' }))).toEqual([
      'systemId',
      'amount',
    ]);
    expect(issues(addNeedSchema(TYPING).safeParse({ ...typed, kind: 'wood', length: 'long', count: '0' }))).toEqual([
      'length',
      'count',
    ]);
    const order = { unit: 'mg', words: '', amount: '', dueOn: '', supplier: '', cost: 'much' };
    expect(issues(addArrivingSchema(TYPING).safeParse(order))).toEqual(['amount', 'words', 'dueOn', 'cost']);
  });

  it('take over what the list of what to buy asks for, and nothing that does not read', () => {
    const products = [{ id: 3, unit: 'mg' as const }];
    expect(readAsked({ product: '3', amount: '2500000', due: '2026-12-12' }, products, HEAD)).toEqual({
      productId: '3',
      words: '',
      amount: '2.5 kg',
      dueOn: '12 Dec 2026',
      given: true,
    });
    expect(readAsked({ product: 'x', amount: '-1', due: 'soon', words: ['a'] }, products, HEAD)).toEqual({
      productId: '',
      words: '',
      amount: '',
      dueOn: '',
      given: false,
    });
  });
});

describe('what is said of promises', () => {
  const promised = { label: 'CAAAAAA', job: 'Desk', jobs: 1, who: 'Ada', on: TODAY, day: '2026-12-12', unit: 'mg' };

  it('names who, when and how much is free; several jobs by the first', () => {
    const say = (facts: Record<string, string | number | null>) =>
      sayRefusal({ code: 'promised-elsewhere', facts: { ...promised, ...facts } }).what;
    expect(say({ promised: 500_000, free: 0, jobs: 3 })).toBe(
      '500 g of C-AAAAAA is promised to another job: Desk and 2 more for 12 Dec 2026, promised by Ada on 25 Nov 2026. Nothing of it is free.',
    );
    expect(say({ promised: 1, free: 0, unit: 'piece', label: 'SAAAAAA', on: null, who: '' })).toBe(
      'S-AAAAAA is promised to another job: Desk for 12 Dec 2026.',
    );
  });

  it('names the jobs that lose what is no longer there', () => {
    expect(sayBroken([])).toBe('');
    expect(sayBroken([{ job: 'Desk' }])).toBe(' Desk loses what was promised of it: look at what it needs.');
    expect(sayBroken([{ job: 'Desk' }, { job: 'Table' }])).toContain(' Desk and Table lose ');
  });
});
