import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inUnit } from '@/shared/promise/in-unit';
import type { Coming, MaterialNeed, OnHand } from '@/shared/promise/material-need';
import { planMaterialNeeds } from '@/shared/promise/plan-material-needs';
import { planWoodNeeds, type WoodNeed, type WoodOnHand } from '@/shared/promise/plan-wood-needs';
import { shareCost } from '@/shared/promise/share-cost';
import { unwrap } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';
import { minorUnits } from '@/shared/units/minor-units';
import { candidate, day, printed, TODAY, USE_DAY } from '@/tests/shared/shelf-life/fixtures';

const DENSITY = unwrap(gramsPerLitre(1100));

const need = (change: Partial<MaterialNeed> = {}): MaterialNeed => ({
  id: 1,
  jobId: 1,
  purpose: 'client',
  on: USE_DAY,
  unit: 'mg',
  amount: 2000,
  used: 0,
  productIds: [1],
  surface: '',
  ...change,
});

type Tin = Partial<OnHand> & { until?: string; lot?: string; opened?: boolean };
const tin = (
  stockId: number,
  left: number,
  { until = '2027-12-31', lot = 'lot-1', opened, ...change }: Tin = {},
): OnHand => {
  const label = `T-${stockId}`;
  const facts = {
    id: String(stockId),
    label,
    left,
    opened: opened ? { on: TODAY, sureness: 'known' as const } : undefined,
  };
  return {
    stockId,
    label,
    productId: 1,
    unit: 'mg',
    left,
    candidate: candidate({ lot: { id: lot, bestBefore: printed(until) }, container: facts }),
    promised: [],
    ...change,
  };
};
const order = (amount: number, on: string, change: Partial<Coming> = {}): Coming => ({
  id: 9,
  productId: 1,
  unit: 'mg',
  amount,
  on: day(on),
  ...change,
});
const plan = (needs: MaterialNeed[], stock: OnHand[], coming: Coming[] = []) =>
  planMaterialNeeds(needs, stock, coming, TODAY);
const sum = (parts: readonly { amount: number }[]) => parts.reduce((total, part) => total + part.amount, 0);

describe('a need of a material', () => {
  it('is what is promised to it, what is free, what comes by its day, and what is short', () => {
    const stock = [tin(1, 500, { promised: [{ jobId: 1, needId: 1, amount: 500 }] }), tin(2, 700)];
    const [standing] = plan([need()], stock, [order(300, '2026-12-10'), order(900, '2026-12-20', { id: 8 })]);
    expect(standing).toMatchObject({
      reserved: [{ label: 'T-1', amount: 500 }],
      have: [{ label: 'T-2', amount: 700 }],
      arriving: [{ id: 9, amount: 300 }],
      short: 500,
    });
  });

  it('finds the first to expire first among what is good on its day, and nothing past it', () => {
    const stock = [
      tin(1, 900, { until: '2027-03-01' }),
      tin(2, 900, { until: '2026-12-18' }),
      tin(3, 900, { until: '2027-01-31' }),
    ];
    const [standing] = plan([need({ amount: 1000 })], stock);
    expect(standing?.have.map((part) => [part.label, part.amount])).toEqual([
      ['T-3', 900],
      ['T-1', 100],
    ]);
  });

  it('names who holds the rest of what would be good for it', () => {
    const promised = [
      { jobId: 2, needId: null, amount: 300 },
      { jobId: 3, needId: null, amount: 400 },
    ];
    const [standing] = plan([need()], [tin(1, 1000, { promised })]);
    expect(standing).toMatchObject({
      elsewhere: [
        { jobId: 2, amount: 300 },
        { jobId: 3, amount: 400 },
      ],
      short: 1700,
    });
    expect(standing?.have).toMatchObject([{ amount: 300 }]);
  });

  it('counts a promise that will be past its limit on the day for nothing, and shows it', () => {
    const promised = [{ jobId: 1, needId: 1, amount: 800 }];
    const [standing] = plan([need({ amount: 800 })], [tin(1, 800, { until: '2026-12-18', promised })]);
    expect(standing).toMatchObject({ reserved: [], failing: [{ amount: 800, lastGoodDay: '2026-12-18' }], short: 800 });
  });

  it('shares what is promised for none in particular among the job’s needs, the earliest first', () => {
    const needs = [need({ id: 1, amount: 600 }), need({ id: 2, amount: 600, on: day('2026-12-10') })];
    const standings = plan(needs, [tin(1, 1000, { promised: [{ jobId: 1, needId: 77, amount: 1000 }] })]);
    expect(standings.map((each) => sum(each.reserved))).toEqual([400, 600]);
  });

  it('is served before a later need; what it takes the other no longer has', () => {
    const needs = [need({ id: 1, amount: 700 }), need({ id: 2, amount: 700, jobId: 2, on: day('2026-12-10') })];
    const standings = plan(needs, [tin(1, 1000)]);
    expect(standings.map((each) => [sum(each.have), each.short])).toEqual([
      [300, 400],
      [700, 0],
    ]);
  });

  it('takes one lot for one visible surface, chosen for all its layers', () => {
    const stock = [tin(1, 1000, { lot: 'a', until: '2027-01-31' }), tin(2, 5000, { lot: 'b', until: '2027-06-30' })];
    const layers = [1, 2].map((id) => need({ id, amount: 900, surface: 'River', on: day(`2026-12-1${id}`) }));
    const standings = plan(layers, stock);
    expect(standings.map((each) => each.have.map((part) => part.label))).toEqual([['T-2'], ['T-2']]);
    expect(standings.some((each) => each.lotsMixed)).toBe(false);
    const short = plan([need({ amount: 5500, surface: 'River' })], stock);
    expect(short[0]).toMatchObject({ lotsMixed: true });
    const anyhow = plan(
      layers.map((each) => ({ ...each, surface: '' })),
      stock,
    );
    expect(anyhow.map((each) => each.have[0]?.label)).toEqual(['T-1', 'T-1']);
  });

  it('is used on its day and good to the day that counts; what is ordered has to come by its own day', () => {
    const [on, goodTo] = [day('2026-12-10'), day('2026-12-17')];
    const lift = need({ on, goodTo, amount: 900 });
    const stock = [tin(1, 1000, { until: '2026-12-16' }), tin(2, 300, { until: '2026-12-17' })];
    expect(plan([lift], stock)).toMatchObject([{ have: [{ label: 'T-2', amount: 300 }], short: 600 }]);
    expect(plan([{ ...lift, goodTo: undefined }], stock)).toMatchObject([{ have: [{ label: 'T-1' }], short: 0 }]);
    expect(plan([lift], [], [order(900, '2026-12-11')])[0]?.short).toBe(900);
    expect(plan([lift], [], [order(900, '2026-12-10')])[0]?.short).toBe(0);
    const promised = [{ jobId: 1, needId: 1, amount: 900 }];
    expect(plan([lift], [tin(1, 1000, { until: '2026-12-16', promised })])[0]).toMatchObject({
      reserved: [],
      failing: [{ amount: 900 }],
    });
  });

  it('goes on with the lot that its surface has, the newest layer’s first, and says where lots meet', () => {
    const stock = [tin(1, 1000, { lot: 'a', until: '2027-01-31' }), tin(2, 1000, { lot: 'b', until: '2027-06-30' })];
    const layers = (lotsUsed: string[]) => [
      need({ id: 1, amount: 500, used: 500, surface: 'River', lotsUsed }),
      need({ id: 2, amount: 500, surface: 'River' }),
    ];
    const second = (lotsUsed: string[], tins = stock) => plan(layers(lotsUsed), tins)[1];
    expect(second([])).toMatchObject({ have: [{ label: 'T-1' }], lotsMixed: false });
    expect(second(['b'])).toMatchObject({ have: [{ label: 'T-2' }], lotsMixed: false });
    expect(second(['a', 'b'])).toMatchObject({ have: [{ label: 'T-2' }], lotsMixed: true });
    expect(second(['gone'])).toMatchObject({ have: [{ label: 'T-1' }], lotsMixed: true });
    // What is promised to a later layer is the surface's lot for an earlier one, too.
    const promised = [{ jobId: 1, needId: 2, amount: 500 }];
    const both = [need({ id: 1, amount: 400, surface: 'River' }), need({ id: 2, amount: 500, surface: 'River' })];
    const [first] = plan(both, [...stock.slice(0, 1), tin(2, 1000, { lot: 'b', until: '2027-06-30', promised })]);
    expect(first).toMatchObject({ have: [{ label: 'T-2' }], lotsMixed: false });
  });

  it('is met where it falls short by less than a small unit of the container, and not where by more', () => {
    const held = (amount: number) => [{ jobId: 1, needId: 1, amount }];
    const tinOf = (amount: number) => [tin(1, 1000, { unit: 'uL', density: DENSITY, promised: held(amount) })];
    // 333 µL are 366.3 mg, 334 are 367.4.
    expect(plan([need({ amount: 367 })], tinOf(333))[0]).toMatchObject({
      reserved: [{ amount: 367 }],
      have: [],
      short: 0,
    });
    expect(plan([need({ amount: 368 })], tinOf(333))[0]?.reserved).toMatchObject([{ amount: 366 }]);
    expect(plan([need({ amount: 360 })], tinOf(333))[0]?.reserved).toMatchObject([{ amount: 366 }]);
    expect(plan([need({ amount: 367 })], tinOf(334))[0]?.reserved).toMatchObject([{ amount: 367 }]);
  });

  it('goes on from the container that the job takes from already, though another is fuller', () => {
    const coats = [1, 2, 3].map((id) => need({ id, amount: 300, on: day(`2026-12-0${id}`) }));
    const stock = [tin(1, 1000), tin(2, 1000)];
    const labels = (standings: ReturnType<typeof plan>) => standings.map((each) => each.have.map((part) => part.label));
    expect(labels(plan(coats, stock))).toEqual([['T-1'], ['T-1'], ['T-1']]);
    expect(labels(plan([...coats, need({ id: 4, amount: 300 })], stock))[3]).toEqual(['T-1', 'T-2']);
    // Not where it would ask for care by then and the other does not.
    const near = [tin(1, 1000, { until: '2027-01-01' }), tin(2, 1000)];
    expect(labels(plan([need({ id: 1, amount: 300, on: TODAY }), need({ id: 2, amount: 300 })], near))).toEqual([
      ['T-1'],
      ['T-2'],
    ]);
  });

  it('is met by volume where the density is known, never a little short; and says what cannot be counted', () => {
    const litre = tin(1, 1000, { unit: 'uL', density: DENSITY });
    const [standing] = plan([need({ amount: 1000 })], [litre]);
    expect(standing).toMatchObject({ have: [{ amount: 1000, stockAmount: 910 }], short: 0 });
    expect(plan([need()], [tin(1, 1000, { unit: 'uL' })])[0]).toMatchObject({
      have: [],
      uncounted: ['T-1'],
      short: 2000,
    });
    expect(inUnit(5, 'piece', 'mg', DENSITY, 'down')).toBeUndefined();
  });

  it('counts no order that is overdue, and none for another product', () => {
    expect(plan([need()], [], [order(900, '2026-11-20'), order(900, '2026-12-01', { productId: 2 })])[0]?.short).toBe(
      2000,
    );
  });

  it('has what was used already, and wants no more than the rest', () => {
    expect(plan([need({ used: 1500 })], [tin(1, 900)])[0]).toMatchObject({ have: [{ amount: 500 }], short: 0 });
    expect(plan([need({ used: 2500 })], [tin(1, 900)])[0]).toMatchObject({ have: [], short: 0 });
  });

  it('adds up, takes no gram twice, and shares what was paid to the last minor unit', () => {
    const aTin = fc.record({
      left: fc.integer({ min: 1, max: 999 }),
      days: fc.nat({ max: 60 }),
      mine: fc.nat({ max: 100 }),
      theirs: fc.nat({ max: 100 }),
    });
    const aNeed = fc.record({
      amount: fc.integer({ min: 1, max: 900 }),
      days: fc.nat({ max: 30 }),
      job: fc.integer({ min: 1, max: 3 }),
      used: fc.nat({ max: 300 }),
      surface: fc.constantFrom('', 'Top'),
    });
    fc.assert(
      fc.property(fc.array(aTin, { maxLength: 5 }), fc.array(aNeed, { maxLength: 5 }), (tins, wanted) => {
        const later = (days: number) => new Date(Date.UTC(2026, 10, 25 + days)).toISOString().slice(0, 10);
        const needs = wanted.map((each, nr) =>
          need({ ...each, id: nr + 1, jobId: each.job, on: day(later(each.days)) }),
        );
        const stock = tins.map(({ left, days, mine, theirs }, nr) => {
          const promised = [
            { jobId: 1, needId: 1, amount: Math.floor((left * mine) / 250) },
            { jobId: 9, needId: null, amount: Math.floor((left * theirs) / 250) },
          ].filter((each) => each.amount > 0);
          const shares = shareCost(minorUnits(1000 + nr), {
            size: left,
            left,
            promises: promised.map((each) => each.amount),
          });
          return tin(nr + 1, left, { until: later(days), promised, shares });
        });
        const standings = plan(needs, stock, [order(500, later(10))]);
        for (const [nr, standing] of standings.entries()) {
          const { amount = 0, used = 0 } = needs[nr] ?? {};
          const met = used + sum(standing.reserved);
          expect(met + sum(standing.have) + sum(standing.arriving) + standing.short).toBe(Math.max(amount, met));
        }
        for (const { stockId, left, promised, shares } of stock) {
          const parts = standings
            .flatMap((each) => [...each.reserved, ...each.failing, ...each.have])
            .filter((part) => part.stockId === stockId);
          const foreign = promised.filter((each) => each.jobId === 9).reduce((total, each) => total + each.amount, 0);
          expect(parts.reduce((total, part) => total + part.stockAmount, 0)).toBeLessThanOrEqual(left - foreign);
          const own = [...(shares?.promises ?? []), shares?.free ?? 0].reduce<number>((total, each) => total + each, 0);
          expect(parts.reduce((total, part) => total + (part.cost ?? 0), 0)).toBeLessThanOrEqual(own);
        }
      }),
    );
  });
});

describe('a need of wood', () => {
  const piece = (stockId: number, change: Partial<WoodOnHand> = {}): WoodOnHand => ({
    stockId,
    label: `S-${stockId}`,
    species: 'Walnut',
    form: 'slab',
    lengthNm: 2000,
    widthNm: 600,
    thicknessNm: 50,
    held: false,
    taken: false,
    ...change,
  });
  const wood = (change: Partial<WoodNeed> = {}): WoodNeed => ({
    id: 1,
    jobId: 1,
    on: USE_DAY,
    amount: 1,
    species: 'walnut',
    form: 'slab',
    lengthNm: 1800,
    ...change,
  });
  const stand = (needs: WoodNeed[], pieces: WoodOnHand[], coming: Parameters<typeof planWoodNeeds>[2] = []) =>
    planWoodNeeds(needs, pieces, coming, TODAY);

  it('is the smallest free piece that is large enough, of the wood and form it names', () => {
    const pieces = [
      piece(1, { lengthNm: 3000 }),
      piece(2),
      piece(3, { lengthNm: 1700 }),
      piece(4, { species: 'Ash' }),
      piece(5, { form: 'board' }),
      piece(6, { held: true }),
    ];
    expect(stand([wood()], pieces)).toMatchObject([{ have: [{ label: 'S-2' }], short: 0 }]);
    expect(stand([wood({ amount: 3 })], pieces)).toMatchObject([
      { have: [{ label: 'S-2' }, { label: 'S-1' }], short: 1 },
    ]);
    expect(stand([wood({ form: '', species: '', lengthNm: undefined, amount: 9 })], pieces)[0]?.have).toHaveLength(5);
    expect(stand([wood({ widthNm: 601 })], pieces)[0]?.short).toBe(1);
    expect(stand([wood({ thicknessNm: 51 })], pieces)[0]?.short).toBe(1);
  });

  it('counts what went in already, then what is promised to the job, each piece for one need', () => {
    const pieces = [
      piece(1, { jobId: 1, taken: true }),
      piece(2, { jobId: 1 }),
      piece(3, { jobId: 2 }),
      piece(4, { jobId: 1, held: true }),
    ];
    expect(stand([wood({ amount: 4 })], pieces)).toMatchObject([
      {
        used: [{ label: 'S-1' }],
        reserved: [{ label: 'S-2' }],
        failing: [{ label: 'S-4' }],
        elsewhere: [{ jobId: 2, amount: 1 }],
        short: 2,
      },
    ]);
    const two = stand([wood(), wood({ id: 2 })], pieces);
    expect(two.map((each) => [...each.used, ...each.reserved].map((part) => part.label))).toEqual([['S-1'], ['S-2']]);
  });

  it('waits for an order whose words name the wood, due by its day', () => {
    const coming = [{ id: 5, words: 'Two walnut slabs from the mill', amount: 2, on: day('2026-12-01') }];
    expect(stand([wood({ amount: 3 })], [], coming)).toMatchObject([{ arriving: [{ id: 5, amount: 2 }], short: 1 }]);
    expect(stand([wood({ species: 'Ash' })], [], coming)[0]?.short).toBe(1);
    expect(stand([wood({ on: day('2026-11-30') })], [], coming)[0]?.short).toBe(1);
  });

  it('counts a pack only where a pack is asked for', () => {
    expect(stand([wood({ form: '' })], [piece(1, { form: 'pack' })])[0]?.short).toBe(1);
    expect(stand([wood({ form: 'pack' })], [piece(1, { form: 'pack' })])[0]?.short).toBe(0);
  });
});
