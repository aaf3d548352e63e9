import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proveBook } from '@/app/_server/ledger/prove-book';
import { type PullContainer, pullContainer } from '@/app/_server/pull/pull-container';
import { discard } from '@/app/_server/stock/discard';
import { loadContainer } from '@/app/_server/stock/load-container';
import { weighContainer } from '@/app/_server/stock/weigh-container';
import { sayRefusal } from '@/app/_server/words/say-refusal';
import { ended, startScript } from '@/tests/support/run-script';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, freshBook, must, refusedWith, storeOf, type TestBook, TODAY } from '@/tests/support/test-book';

const whole = (label: string, asked = 2_500_000): PullContainer => ({
  label,
  purpose: 'client',
  dayOfUse: TODAY,
  asked,
  seen: 'care',
});

describe('many hands at one tin', () => {
  let test: TestBook;
  let products = 0;
  const oneTin = async () => {
    products += 1;
    const { labels } = await stocked(test.book, { product: { name: `Resin ${products}` } });
    return labels[0] ?? '';
  };
  const left = async (label: string) => (await loadContainer(test.book.read, label))?.left;
  const entries = () => test.book.read.entry.count();

  beforeAll(async () => {
    test = await freshBook();
  });
  afterAll(async () => {
    expect((await proveBook(test.book.read)).differences).toEqual([]);
    await test.remove();
  });

  it('gives the last of it to exactly one of forty who ask at once, and tells the others what happened', async () => {
    const label = await oneTin();
    const before = await entries();
    const outcomes = await Promise.all([...Array(40)].map(() => pullContainer(test.book, by(), whole(label))));
    expect(outcomes.filter((each) => each.ok)).toHaveLength(1);
    for (const each of outcomes) {
      if (each.ok) continue;
      expect(each.error).toMatchObject({ code: 'already-empty', facts: { label } });
      expect(sayRefusal(each.error).what).toMatch(
        /^Nothing is left of C-[0-9A-Z]{6}: the last of it was taken already\.$/,
      );
    }
    expect(await left(label)).toBe(0);
    expect(await entries()).toBe(before + 1);
  });

  it('stops at what is left when forty ask for a little each', async () => {
    const label = await oneTin();
    const outcomes = await Promise.all([...Array(40)].map(() => pullContainer(test.book, by(), whole(label, 100_000))));
    const codes = outcomes.map((each) => (each.ok ? 'taken' : each.error.code));
    expect(codes.filter((each) => each === 'taken')).toHaveLength(25);
    expect(codes.filter((each) => each === 'already-empty')).toHaveLength(15);
    expect(await left(label)).toBe(0);
  });

  it('says how much is left to one who asks for more than that', async () => {
    const label = await oneTin();
    must(await pullContainer(test.book, by(), whole(label, 2_000_000)));
    const outcome = await pullContainer(test.book, by(), whole(label, 600_000));
    if (outcome.ok) throw new Error('It was not refused.');
    expect(outcome.error).toMatchObject({
      code: 'not-enough-left',
      facts: { left: 500_000, asked: 600_000, unit: 'mg' },
    });
    expect(await left(label)).toBe(500_000);
  });

  it('lets pulling, weighing and throwing away race without losing or making any', async () => {
    const label = await oneTin();
    const outcomes = await Promise.all([
      ...[...Array(12)].map(() => pullContainer(test.book, by(), whole(label, 300_000))),
      weighContainer(test.book, by(), { label, left: 1_000_000, why: 'On the scale' }),
      discard(test.book, by(), { label, why: 'Fell off the bench' }),
    ]);
    expect(outcomes.some((each) => each.ok)).toBe(true);
    const stock = await test.book.read.stock.findUniqueOrThrow({ where: { label }, include: { movements: true } });
    const sum = stock.movements.reduce((total, each) => total + each.quantityDelta, 0n);
    expect(stock.quantity).toBe(sum);
    expect(stock.quantity >= 0n).toBe(true);
  });

  it('gives the last of it to exactly one of several processes at the same book', async () => {
    const label = await oneTin();
    const children = [...Array(3).keys()].map((nr) =>
      startScript(
        'tests/support/children/pull-from-child.ts',
        [test.files.folder, label, '2500000', '8', `child${nr}`],
        storeOf(test.files),
      ),
    );
    const ends = children.map(ended);
    await Promise.all(
      children.map((child) => new Promise<void>((resolve) => child.stdout?.once('data', () => resolve()))),
    );
    for (const child of children) child.stdin?.write('go\n');
    const here = await pullContainer(test.book, by(), whole(label));
    const said = (await Promise.all(ends)).map(({ out, err }) => {
      expect(err).toBe('');
      return JSON.parse(out.replace('ready\n', '')) as string[];
    });
    const codes = [...said.flat(), here.ok ? 'taken' : here.error.code];
    expect(codes).toHaveLength(25);
    expect(codes.filter((each) => each === 'taken')).toHaveLength(1);
    expect(codes.filter((each) => each === 'already-empty')).toHaveLength(24);
    expect(await left(label)).toBe(0);
  });

  it('answers the first result to a key given again at the same moment, and writes once', async () => {
    const label = await oneTin();
    const before = await entries();
    const outcomes = await Promise.all(
      [...Array(12)].map(() => pullContainer(test.book, by(`again-${label}`), whole(label, 400_000))),
    );
    const answers = outcomes.map(must);
    expect(new Set(answers.map((each) => JSON.stringify(each))).size).toBe(1);
    expect(outcomes.filter((each) => each.ok && !each.value.replayed)).toHaveLength(1);
    expect(await entries()).toBe(before + 1);
    expect(await left(label)).toBe(2_100_000);
  });

  it('answers the first result to a key given again later, when the tin has long been empty', async () => {
    const label = await oneTin();
    const key = `later-${label}`;
    const first = must(await pullContainer(test.book, by(key), whole(label, 400_000)));
    must(await pullContainer(test.book, by(), whole(label, 2_100_000)));
    const before = await entries();
    const again = await pullContainer(test.book, by(key), whole(label, 400_000));
    expect(again).toEqual({ ok: true, value: { answer: first, replayed: true } });
    expect(await entries()).toBe(before);
    expect(await left(label)).toBe(0);
  });

  it('refuses a key given again for another amount or for another act', async () => {
    const label = await oneTin();
    const key = `other-${label}`;
    must(await pullContainer(test.book, by(key), whole(label, 400_000)));
    const before = await entries();
    expect(refusedWith(await pullContainer(test.book, by(key), whole(label, 500_000)))).toBe(
      'key-used-for-something-else',
    );
    expect(refusedWith(await discard(test.book, by(key), { label, why: 'Gone' }))).toBe('key-used-for-something-else');
    expect(await entries()).toBe(before);
    expect(await left(label)).toBe(2_100_000);
  });

  it('does not keep the key of a refused act: it may be asked again', async () => {
    const label = await oneTin();
    const key = `retry-${label}`;
    expect(refusedWith(await pullContainer(test.book, by(key), whole(label, 2_600_000)))).toBe('not-enough-left');
    expect(must(await pullContainer(test.book, by(key), whole(label, 2_500_000))).left).toBe(0);
  });
});
