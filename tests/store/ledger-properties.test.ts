import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Command } from '@/app/_server/act';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { rebuildBalances } from '@/app/_server/ledger/rebuild-balances';
import { reverseEntry } from '@/app/_server/ledger/reverse-entry';
import { addPlace } from '@/app/_server/places/add-place';
import { teachProduct } from '@/app/_server/products/teach-product';
import { pullContainer } from '@/app/_server/pull/pull-container';
import { changeHold } from '@/app/_server/stock/change-hold';
import { discard } from '@/app/_server/stock/discard';
import { moveStock } from '@/app/_server/stock/move-stock';
import { noteCondition } from '@/app/_server/stock/note-condition';
import { openContainer } from '@/app/_server/stock/open-container';
import { type Received, receiveContainers } from '@/app/_server/stock/receive-containers';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { CONDITIONS } from '@/shared/shelf-life/types/container-facts';
import { HOLD_STATES } from '@/shared/shelf-life/types/lot-facts';
import { RESIN } from '@/tests/support/stock-of-a-test';
import { by, day, freshBook, must, type TestBook, TODAY } from '@/tests/support/test-book';

const SIZE = 1_000_000;
const nth = fc.nat({ max: 30 });

/** What somebody does, aimed at whichever thing or entry there is by then. */
const anAct = fc.oneof(
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('receive' as const),
      count: fc.integer({ min: 1, max: 3 }),
      left: fc.integer({ min: 1, max: SIZE }),
      cost: fc.nat({ max: 99_999 }),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ do: fc.constant('open' as const), nth, ago: fc.nat({ max: 20 }), sure: fc.boolean() }),
  },
  {
    weight: 5,
    arbitrary: fc.record({ do: fc.constant('pull' as const), nth, amount: fc.integer({ min: 1, max: SIZE }) }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('weigh' as const), nth, left: fc.nat({ max: SIZE }) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('move' as const), nth, place: fc.nat({ max: 1 }) }) },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constant('condition' as const),
      nth,
      conditions: fc.subarray([...CONDITIONS], { maxLength: 2 }),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('hold' as const),
      nth,
      hold: fc.constantFrom('free' as const, 'free' as const, ...HOLD_STATES),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('discard' as const), nth }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant('reverse' as const), nth }) },
);
type Act = typeof anAct extends fc.Arbitrary<infer A> ? A : never;

describe('whatever is done in whatever order', () => {
  let test: TestBook;
  let places: string[] = [];
  let runs = 0;

  beforeAll(async () => {
    test = await freshBook();
    for (const name of ['Cabinet', 'Bench']) {
      places = [...places, must(await addPlace(test.book, by(), { name, kind: 'cabinet' })).label];
    }
  });
  afterAll(() => test.remove());

  it('quantities and money are conserved, a replay writes nothing, a reversal restores, and the book proves', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anAct, { minLength: 1, maxLength: 30, size: 'max' }), async (acts) => {
        runs += 1;
        const { productId } = must(await teachProduct(test.book, by(), { ...RESIN, name: `Resin ${runs}` }));
        await live(test, productId, places, [{ do: 'receive', count: 2, left: SIZE, cost: 4_950 }, ...acts]);
      }),
      { numRuns: 40, seed: 20261125 },
    );
    expect((await rebuildBalances(test.book)).mended).toEqual([]);
    const proof = await proveBook(test.book.read);
    expect(proof.differences).toEqual([]);
    const kinds = await test.book.read.entry.groupBy({ by: ['kind'], _count: true });
    for (const kind of [
      'received',
      'opened',
      'pulled',
      'weighed',
      'moved',
      'condition-noted',
      'held',
      'released',
      'discarded',
      'reversed',
    ]) {
      expect(kinds.find((each) => each.kind === kind)?._count, `acts of the kind ${kind}`).toBeGreaterThan(3);
    }
  });
});

async function live(test: TestBook, productId: number, places: string[], acts: readonly Act[]): Promise<void> {
  const { book } = test;
  const labels: string[] = [];
  const written: { key: string; entryId: number }[] = [];
  const left = new Map<string, number>();
  let spent = 0;

  for (const act of acts) {
    const before = await balances();
    const entries = await book.read.entry.count();
    const outcome = await perform(act);
    if (outcome === 'skipped') continue;
    const after = await balances();
    if (!outcome.ok) {
      expect(after, 'a refused act changes nothing').toEqual(before);
      expect(await book.read.entry.count()).toBe(entries);
      continue;
    }
    for (const [label, row] of after) {
      expect(row.quantity, `${act.do} of ${label}`).toBe(BigInt(left.get(label) ?? 0));
      expect(row.quantity >= 0n).toBe(true);
    }
    await outcome.again();
    expect(await balances(), 'a replay changes nothing').toEqual(after);
    expect(await book.read.entry.count(), 'a replay writes nothing').toBe(entries + 1);
    if (act.do !== 'receive' && act.do !== 'reverse' && outcome.entryId % 3 === 0) {
      must(await reverseEntry(book, by(), { entryId: outcome.entryId, why: 'Put right at once' }));
      expect(await balances(), 'a reversal restores every balance').toEqual(before);
      for (const [label, row] of before) left.set(label, Number(row.quantity));
    }
  }
  await conserved();

  /** Everything of a balance but which movement it stands at. */
  async function balances() {
    const rows = await book.read.stock.findMany({
      where: { label: { in: labels } },
      omit: { lastMovementId: true },
      orderBy: { id: 'asc' },
    });
    return new Map(rows.map((row) => [row.label ?? '', row]));
  }

  /** What came in, less what was used, more or less what was corrected, is what is left; and what was paid stays paid. */
  async function conserved() {
    const rows = await book.read.movement.findMany({
      where: { stock: { label: { in: labels } } },
      select: { quantityDelta: true, entry: { select: { kind: true } } },
    });
    const sumOf = (...kinds: string[]) =>
      rows.filter((row) => kinds.includes(row.entry.kind)).reduce((sum, row) => sum + row.quantityDelta, 0n);
    const inShop = [...(await balances()).values()].reduce((sum, row) => sum + row.quantity, 0n);
    const corrections = sumOf('weighed', 'reversed');
    expect(sumOf('received') + sumOf('pulled', 'discarded') + corrections).toBe(inShop);
    const kinds = new Set(rows.filter((row) => row.quantityDelta !== 0n).map((row) => row.entry.kind));
    expect(
      [...kinds].filter((kind) => !['received', 'pulled', 'discarded', 'weighed', 'reversed'].includes(kind)),
    ).toEqual([]);
    const paid = await book.read.container.aggregate({ where: { productId }, _sum: { costMinor: true } });
    expect(Number(paid._sum.costMinor ?? 0n)).toBe(spent);
  }

  async function perform(act: Act) {
    const label = 'nth' in act ? labels[act.nth % Math.max(labels.length, 1)] : undefined;
    const stockIdOf = async (of: string) => (await book.read.stock.findUniqueOrThrow({ where: { label: of } })).id;
    switch (act.do) {
      case 'receive': {
        const input = {
          productId,
          lotCode: `L${labels.length % 3}`,
          dates: {},
          count: act.count,
          size: SIZE,
          left: act.left,
          opened: act.left < SIZE ? { on: TODAY, sureness: 'known' as const } : undefined,
          costMinor: act.cost,
          receivedOn: TODAY,
        };
        return run(receiveContainers, input, (answer: Received) => {
          for (const each of answer.containers) {
            labels.push(each.label);
            left.set(each.label, act.left);
          }
          spent += act.cost * act.count;
        });
      }
      case 'reverse': {
        const target = written[act.nth % Math.max(written.length, 1)];
        if (!target) return 'skipped' as const;
        const movements = await book.read.movement.findMany({
          where: { entryId: target.entryId },
          include: { stock: true },
        });
        return run(reverseEntry, { entryId: target.entryId, why: 'Mistaken' }, () => {
          for (const each of movements) add(each.stock.label ?? '', -Number(each.quantityDelta));
        });
      }
    }
    if (label === undefined) return 'skipped' as const;
    switch (act.do) {
      case 'open': {
        const on = day(`2026-11-${String(25 - act.ago).padStart(2, '0')}`);
        return run(openContainer, {
          label,
          opened: { on, sureness: act.sure ? ('known' as const) : ('guessed' as const) },
        });
      }
      case 'pull':
        return run(
          pullContainer,
          { label, purpose: 'test' as const, dayOfUse: TODAY, asked: act.amount, seen: 'care' as const },
          () => add(label, -act.amount),
        );
      case 'weigh':
        return run(weighContainer, { label, left: act.left, why: 'Scale' }, () => left.set(label, act.left));
      case 'move':
        return run(moveStock, { labels: [label], placeLabel: places[act.place] ?? '' });
      case 'condition':
        return run(noteCondition, { label, conditions: act.conditions, why: 'Looked' });
      case 'hold': {
        // A release is aimed at what is held, where anything is.
        const held = [...(await balances()).values()].filter((row) => act.hold === 'free' && row.hold !== 'free');
        const stockId = held[act.nth % Math.max(held.length, 1)]?.id ?? (await stockIdOf(label));
        return run(changeHold, { stockId, hold: act.hold, why: 'Decided' });
      }
      case 'discard':
        return run(discard, { label, why: 'Thrown away' }, () => left.set(label, 0));
    }
  }

  function add(label: string, delta: number) {
    left.set(label, (left.get(label) ?? 0) + delta);
  }

  async function run<I, A>(command: Command<I, A>, input: I, done?: (answer: A) => void) {
    const asked = by();
    const first = await command(book, asked, input);
    if (!first.ok) return { ok: false as const };
    done?.(first.value.answer);
    const { id: entryId } = await book.read.entry.findUniqueOrThrow({
      where: { key: asked.key },
      select: { id: true },
    });
    written.push({ key: asked.key, entryId });
    return {
      ok: true as const,
      entryId,
      again: async () =>
        expect(await command(book, asked, input)).toEqual({
          ok: true,
          value: { answer: first.value.answer, replayed: true },
        }),
    };
  }
}
