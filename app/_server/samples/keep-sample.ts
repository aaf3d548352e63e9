import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';

/** A cured piece kept of a lift, or of two lots that were mixed. */
export type KeepSample = {
  name: string;
  liftId?: number;
  lotAId?: number;
  lotBId?: number;
  placeLabel?: string;
  madeOn: CalendarDate;
  /** When to look at it first; never where it is left out. */
  lookOn?: CalendarDate;
  note: string;
};

/** Puts a sample on the shelf of samples. One of a lift is of the lots that were weighed out for it. */
export const keepSample: Command<KeepSample, { sampleId: number; name: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'sample-kept', request: input }, async (pen) => {
    const { liftId, madeOn, lookOn } = input;
    if (madeOn > dateIn(pen.book.timeZone, pen.now)) return err({ code: 'received-in-the-future', field: 'madeOn' });
    if (lookOn && lookOn <= madeOn) return err({ code: 'look-before-made', field: 'lookOn' });
    const place = input.placeLabel
      ? await pen.tx.place.findUnique({ where: { label: input.placeLabel }, select: { id: true } })
      : null;
    if (input.placeLabel && !place) return err({ code: 'not-found', field: 'placeLabel' });
    const lift = liftId === undefined ? null : await ofLift(pen.tx, liftId);
    if (liftId !== undefined && !lift) return err({ code: 'not-found', field: 'liftId' });
    const lots = { A: input.lotAId ?? lift?.lots.A, B: input.lotBId ?? lift?.lots.B };
    if (!lift && lots.A === undefined && lots.B === undefined)
      return err({ code: 'sample-of-nothing', field: 'liftId' });
    const name = input.name.trim();
    const last = await pen.tx.sample.aggregate({ _max: { id: true } });
    const sampleId = (last._max.id ?? 0) + 1;
    const answer = { sampleId, name };
    await pen.enter(
      {
        why: [name, input.note.trim()].filter(Boolean).join('. '),
        jobId: lift?.jobId,
        placeId: place?.id,
        stockId: lots.A ?? lots.B,
        alsoStockId: lots.A === undefined ? undefined : lots.B,
      },
      answer,
    );
    await pen.tx.sample.create({
      data: {
        id: sampleId,
        entryId: pen.entryId,
        name,
        liftId: liftId ?? null,
        lotAId: lots.A ?? null,
        lotBId: lots.B ?? null,
        placeId: place?.id ?? null,
        madeOn,
        lookOn: lookOn ?? null,
        note: input.note.trim(),
      },
      select: { id: true },
    });
    return ok(answer);
  });

type Tx = Parameters<Parameters<typeof writeEntry>[2]>[0]['tx'];

/** The job of a lift, and the lots weighed out for it: of each part the one that most came from. */
async function ofLift(tx: Tx, liftId: number) {
  const lift = await tx.lift.findUnique({ where: { id: liftId }, select: { pour: { select: { jobId: true } } } });
  if (!lift) return null;
  const rows = await tx.weighed.findMany({
    where: { liftId, entry: { reversedBy: null } },
    select: { part: true, massMg: true, stock: { select: { container: { select: { lotId: true } } } } },
  });
  const most = (part: 'A' | 'B') => {
    const sums = new Map<number, number>();
    for (const row of rows) {
      const lotId = row.part === part ? row.stock.container?.lotId : undefined;
      if (lotId !== undefined) sums.set(lotId, (sums.get(lotId) ?? 0) + Number(row.massMg));
    }
    return [...sums].sort(([, a], [, b]) => b - a)[0]?.[0];
  };
  return { jobId: lift.pour.jobId, lots: { A: most('A'), B: most('B') } };
}
