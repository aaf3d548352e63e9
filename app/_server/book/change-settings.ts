import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

export type Settings = {
  name: string;
  timeZone: string;
  units: 'metric' | 'imperial';
  dateOrder: 'day-first' | 'month-first';
};

/** Changes the workshop's name, time zone, units, or how typed dates are read. The currency stays: costs are kept in it. */
export const changeSettings: Command<Settings, { name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'settings-changed', request: input }, async (pen) => {
    const before = await pen.tx.book.findUniqueOrThrow({ where: { id: 1 } });
    const row = { ...input, name: input.name.trim() };
    const changed = (Object.keys(row) as (keyof Settings)[]).filter((key) => row[key] !== before[key]);
    if (changed.length === 0) return err({ code: 'changes-nothing' });
    await pen.tx.book.update({ where: { id: 1 }, data: row, select: { id: true } });
    await pen.enter(
      { why: changed.map((key) => `${key}: ${before[key]} → ${row[key]}`).join('; ') },
      { name: row.name },
    );
    return ok({ name: row.name });
  });
