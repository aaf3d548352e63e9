import fs from 'node:fs/promises';
import path from 'node:path';
import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptSheet, receiveSheet } from '@/app/_server/pours/receive-sheet';
import { refuseSheet } from '@/app/_server/pours/refuse-sheet';
import { newestSheet } from '@/app/_server/pours/sheet-of';
import { bookFiles } from '@/prisma/book-files';
import { checkSheet } from '@/shared/pour/check-sheet';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { err, ok } from '@/shared/result/result';

export type KeepSheet = {
  systemId: number;
  /** `from` follows from the file: without one the numbers are typed. */
  facts: Omit<ResinSheet, 'from'>;
  /** The sheet itself; without one the file of the sheet before stays where `sameFile` says so. */
  sheet?: KeptSheet;
  sameFile?: boolean;
};

export type SheetKept = { systemId: number; entryId: number };

/**
 * Keeps what the data sheet of a resin system says. The newest counts; those before stay in the book, and so do the pours
 * that were planned by them. Numbers that contradict each other are refused with both.
 */
export const keepSheet: Command<KeepSheet, SheetKept> = (book, by, { systemId, facts, sheet, sameFile }) =>
  writeEntry(
    book,
    { ...by, kind: 'sheet-kept', request: { systemId, facts, bytes: sheet?.bytes, sameFile } },
    async (pen) => {
      const system = await pen.tx.resinSystem.findUnique({
        where: { id: systemId },
        select: { name: true, products: { select: { id: true }, orderBy: { id: 'asc' }, take: 1 } },
      });
      if (!system) return err({ code: 'not-found', field: 'systemId' });
      const before = await newestSheet(pen.tx, systemId);
      const kept = sheet ?? (sameFile ? before?.kept : undefined);
      const whole: ResinSheet = { ...facts, from: kept ? 'sheet' : 'typed' };
      const checked = checkSheet(whole);
      if (!checked.ok) return err(refuseSheet(checked.error));
      const answer: SheetKept = { systemId, entryId: pen.entryId };
      await pen.enter(
        {
          productId: system.products[0]?.id,
          why: `${system.name}${kept ? `, ${kept.fileName}` : ', typed, no sheet'}`,
        },
        answer,
      );
      await pen.tx.sheet.create({
        data: {
          entryId: pen.entryId,
          systemId,
          // A file belongs to the row that brought it; one that goes on using it names it beside its facts.
          facts: JSON.stringify({ ...whole, file: kept?.file }),
          file: sheet?.file ?? null,
          fileName: kept?.fileName ?? '',
          bytes: kept?.bytes ?? null,
        },
        select: { id: true },
      });
      return ok(answer);
    },
  );

/** `keepSheet` of a file as it was uploaded. Where nothing new is written, the file goes again. */
export const keepSentSheet: Command<Omit<KeepSheet, 'sheet'> & { file?: File }, SheetKept> = async (
  book,
  by,
  { file, ...sheet },
) => {
  if (!file) return keepSheet(book, by, sheet);
  const kept = await receiveSheet(Buffer.from(await file.arrayBuffer()), file.name);
  if (!kept.ok) return kept;
  const forget = () => fs.rm(path.join(bookFiles().sheets, kept.value.file), { force: true });
  const written = await keepSheet(book, by, { ...sheet, sheet: kept.value }).catch(async (error: unknown) => {
    await forget();
    throw error;
  });
  if (!written.ok || written.value.replayed) await forget();
  return written;
};
