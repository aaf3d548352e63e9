import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';

/** A look at a lot or a container, or a small test pour of it, with its outcome. */
export type RecordInspection = {
  lotId: number;
  /** The one container it speaks for; the whole lot without it. */
  containerLabel?: string;
  kind: 'inspection' | 'test-pour';
  madeOn: CalendarDate;
  passed: boolean;
  validUntil?: CalendarDate;
  method: string;
  note: string;
  photo?: KeptPhoto;
};

export const recordInspection: Command<RecordInspection, { lotId: number; madeOn: CalendarDate; passed: boolean }> = (
  book,
  by,
  { photo, ...input },
) =>
  writeEntry(book, { ...by, kind: 'inspected', request: { ...input, photo: whatPhotoIs(photo) } }, async (pen) => {
    if (input.madeOn > dateIn(pen.book.timeZone, pen.now))
      return err({ code: 'received-in-the-future', field: 'madeOn' });
    if (input.validUntil && input.validUntil < input.madeOn) {
      return err({ code: 'inspection-valid-before-made', field: 'validUntil' });
    }
    if (input.kind === 'test-pour' && !photo && input.note.trim() === '')
      return err({ code: 'override-needs-test-pour', field: 'note' });
    const lot = await pen.tx.lot.findUnique({
      where: { stockId: input.lotId },
      select: { stockId: true, productId: true },
    });
    if (!lot) return err({ code: 'not-found' });
    const container = input.containerLabel
      ? await pen.tx.container.findFirst({
          where: { lotId: lot.stockId, stock: { label: input.containerLabel } },
          select: { stockId: true },
        })
      : null;
    if (input.containerLabel && !container) return err({ code: 'not-found', field: 'containerLabel' });
    const answer = { lotId: lot.stockId, madeOn: input.madeOn, passed: input.passed };
    const words = `${input.kind === 'test-pour' ? 'Test pour' : 'Inspection'} ${input.passed ? 'passed' : 'failed'}`;
    await pen.enter(
      {
        productId: lot.productId,
        why: [words, input.method.trim(), input.note.trim()].filter(Boolean).join('. '),
        stockId: container?.stockId ?? lot.stockId,
      },
      answer,
    );
    const photoId = photo ? await keepPhoto(pen, container?.stockId ?? lot.stockId, photo) : undefined;
    await pen.tx.inspection.create({
      data: {
        lotId: lot.stockId,
        containerId: container?.stockId,
        entryId: pen.entryId,
        kind: input.kind,
        madeOn: input.madeOn,
        passed: input.passed,
        validUntil: input.validUntil,
        method: input.method.trim(),
        note: input.note.trim(),
        photoId,
      },
      select: { id: true },
    });
    return ok(answer);
  });
