import type { Command } from '@/app/_server/act';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok, type Result } from '@/shared/result/result';

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
  /** The lot it was mixed with, where the two were tried together: then it speaks for both, and for them together only. */
  pairLotId?: number;
  massMg?: number;
  roomTenthsC?: number;
  /** How long it was watched, or until it gelled. */
  minutes?: number;
  /** What was seen. */
  result?: string;
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
    const pair = input.pairLotId === undefined ? undefined : await pairOf(pen, lot, input.pairLotId);
    if (pair && !pair.ok) return pair;
    const answer = { lotId: lot.stockId, madeOn: input.madeOn, passed: input.passed };
    const words = `${input.kind === 'test-pour' ? 'Test pour' : 'Inspection'} ${input.passed ? 'passed' : 'failed'}`;
    await pen.enter(
      {
        productId: lot.productId,
        why: [
          pair ? `${words}, together ${pair.value.words}` : words,
          input.method.trim(),
          sayMeasures(input),
          input.note.trim(),
        ]
          .filter(Boolean)
          .join('. '),
        stockId: container?.stockId ?? lot.stockId,
        alsoStockId: pair?.value.lotId,
      },
      answer,
    );
    const photoId = photo ? await keepPhoto(pen, container?.stockId ?? lot.stockId, photo) : undefined;
    const found = {
      entryId: pen.entryId,
      kind: input.kind,
      madeOn: input.madeOn,
      passed: input.passed,
      validUntil: input.validUntil,
      method: input.method.trim(),
      note: input.note.trim(),
      photoId,
      massMg: input.massMg === undefined ? null : BigInt(input.massMg),
      roomTenthsC: input.roomTenthsC ?? null,
      minutes: input.minutes ?? null,
      result: input.result?.trim() ?? '',
    };
    await pen.tx.inspection.createMany({
      data: [
        { ...found, lotId: lot.stockId, containerId: container?.stockId, pairLotId: pair?.value.lotId },
        // It stands with both lots, each naming the other.
        ...(pair ? [{ ...found, lotId: pair.value.lotId, pairLotId: lot.stockId }] : []),
      ],
    });
    return ok(answer);
  });

/** The other lot of a pair: of the other part of the same system. */
async function pairOf(
  pen: Pen,
  { productId }: { productId: number },
  pairLotId: number,
): Promise<Result<{ lotId: number; words: string }, Refusal>> {
  const [own, other] = await Promise.all([
    pen.tx.product.findUniqueOrThrow({ where: { id: productId }, select: { systemId: true, part: true } }),
    pen.tx.lot.findUnique({
      where: { stockId: pairLotId },
      select: { stockId: true, code: true, product: { select: { name: true, systemId: true, part: true } } },
    }),
  ]);
  if (!other) return err({ code: 'not-found', field: 'pairLotId' });
  const { product } = other;
  const fits = own.systemId !== null && own.systemId === product.systemId && own.part !== product.part;
  if (!fits) return err({ code: 'pair-of-other-system', field: 'pairLotId', facts: { product: product.name } });
  return ok({
    lotId: other.stockId,
    words: `with ${product.name}, ${other.code ? `lot ${other.code}` : 'no lot code'}`,
  });
}

/** What was measured of it, for the history. */
function sayMeasures({ massMg, roomTenthsC, minutes, result }: RecordInspection): string {
  return [
    massMg === undefined ? '' : `${massMg / 1000} g`,
    roomTenthsC === undefined ? '' : `${roomTenthsC / 10} °C`,
    minutes === undefined ? '' : `${minutes} min`,
    result?.trim() ?? '',
  ]
    .filter(Boolean)
    .join(', ');
}
