import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';

/** How far a piece leaves a straightedge, nanometres; null where nobody measured. */
export type NoteWarp = { label: string; cupNm: number | null; bowNm: number | null; twistNm: number | null };

/** Half a metre: what leaves a straightedge further is no board. */
const MOST_NM = 500_000_000;

/** Keeps how far a piece leaves a straightedge, across, along, and from corner to corner. */
export const noteWarp: Command<NoteWarp, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'warp-noted', request: input }, async (pen) => {
    const { label, ...warp } = input;
    const row = await pen.tx.piece.findFirst({
      where: { stock: { label } },
      select: { stockId: true, cupNm: true, bowNm: true, twistNm: true },
    });
    if (!row) return err({ code: 'not-found', facts: { label } });
    const names = ['cupNm', 'bowNm', 'twistNm'] as const;
    const absurd = names.find((name) => {
      const nm = warp[name];
      return nm !== null && (!Number.isInteger(nm) || nm < 0 || nm > MOST_NM);
    });
    if (absurd) return err({ code: 'outside-range', field: absurd.replace('Nm', '') });
    const wide = (nm: number | null) => (nm === null ? null : BigInt(nm));
    const data = { cupNm: wide(warp.cupNm), bowNm: wide(warp.bowNm), twistNm: wide(warp.twistNm) };
    if (names.every((name) => data[name] === row[name])) return err({ code: 'changes-nothing' });
    await pen.tx.piece.update({ where: { stockId: row.stockId }, data, select: { stockId: true } });
    const prefer = pen.book.units === 'imperial' ? 'imperial' : 'metric';
    const said = names.flatMap((name) => {
      const nm = warp[name];
      return nm === null ? [] : `${name.replace('Nm', '')} ${printLength(nanometres(nm), { prefer, denominator: 32 })}`;
    });
    await pen.enter({ stockId: row.stockId, why: said.join(', ') || 'nothing any more' }, { label });
    return ok({ label });
  });
