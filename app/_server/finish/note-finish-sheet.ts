import type { Command } from '@/app/_server/act';
import { readFinishSheet } from '@/app/_server/finish/read-finish-sheet';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { checkFinishSheet, type FinishSheet } from '@/shared/finish/finish-sheet';
import { err, ok } from '@/shared/result/result';

export type NoteFinishSheet = { productId: number; sheet: FinishSheet };

/** Keeps what a finish's data sheet says. The newest counts; the earlier ones stay in the book. */
export const noteFinishSheet: Command<NoteFinishSheet, { productId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'finish-sheet-noted', request: input }, async (pen) => {
    const { productId } = input;
    const product = await pen.tx.product.findUnique({ where: { id: productId }, select: { name: true } });
    if (!product) return err({ code: 'not-found' });
    const sheet = checkFinishSheet(input.sheet);
    if (!sheet.ok) return err({ code: sheet.error.code, field: sheet.error.field });
    const facts = JSON.stringify(sheet.value);
    const before = await readFinishSheet(pen.tx, productId);
    if (before && JSON.stringify(before) === facts) return err({ code: 'changes-nothing' });
    const answer = { productId };
    await pen.enter({ productId, why: saySheet(sheet.value) }, answer);
    await pen.tx.sheet.create({ data: { entryId: pen.entryId, productId, facts }, select: { id: true } });
    return ok(answer);
  });

function saySheet({ from, coverageTenths, coats, recoatFromHours, recoatToHours, cureDays }: FinishSheet): string {
  const said = [
    coverageTenths === undefined ? '' : `${coverageTenths / 10} m² a litre`,
    coats === undefined ? '' : `${coats} coats`,
    recoatFromHours === undefined ? '' : `coat again from ${recoatFromHours} hours`,
    recoatToHours === undefined ? '' : `to ${recoatToHours} hours`,
    cureDays === undefined ? '' : `cured after ${cureDays} days`,
    from === 'typed' ? 'typed without a sheet' : '',
  ];
  return said.filter(Boolean).join(', ');
}
