import type { Command } from '@/app/_server/act';
import { WIDEST_KERF_NM } from '@/app/_server/cuts/refuse-to-cut';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';

/** An offcut shorter or narrower than this is offered as scrap; what the saw takes. Nanometres. */
export type HouseSizes = { houseLengthNm: number; houseWidthNm: number; kerfNm: number };

/** Longer than this every slab of the shop would be scrap: 20 m. */
const LONGEST_NM = 20_000_000_000;

/** Changes what this workshop calls too small to keep, and the kerf its cuts begin with. */
export const changeHouseSizes: Command<HouseSizes, { changed: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'settings-changed', request: input }, async (pen) => {
    const before = await pen.tx.book.findUniqueOrThrow({ where: { id: 1 } });
    const sizes = Object.entries(input) as [keyof HouseSizes, number][];
    const bad = sizes.find(
      ([size, nm]) => !Number.isSafeInteger(nm) || nm < 0 || nm > (size === 'kerfNm' ? WIDEST_KERF_NM : LONGEST_NM),
    );
    if (bad) return err({ code: 'outside-range', field: bad[0] });
    const changed = sizes.filter(([size, nm]) => before[size] !== BigInt(nm));
    if (changed.length === 0) return err({ code: 'changes-nothing' });
    const row = Object.fromEntries(sizes.map(([size, nm]) => [size, BigInt(nm)]));
    await pen.tx.book.update({ where: { id: 1 }, data: row, select: { id: true } });
    const prefer = pen.book.units === 'imperial' ? 'imperial' : 'metric';
    const print = (nm: bigint | number) => printLength(nanometres(nm), { prefer, denominator: 64 });
    const why = changed.map(([size, nm]) => `${size}: ${print(before[size])} → ${print(nm)}`).join('; ');
    const answer = { changed: changed.length };
    await pen.enter({ why }, answer);
    return ok(answer);
  });
