import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

/** Moves containers and pieces to a place. What stands there already is passed over. */
export const moveStock: Command<
  { labels: string[]; placeLabel: string },
  { moved: string[]; place: string; entryId: number }
> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'moved', request: input }, async (pen) => {
    const place = await pen.tx.place.findUnique({
      where: { label: input.placeLabel },
      select: { id: true, name: true },
    });
    if (!place) return err({ code: 'not-found', field: 'placeLabel' });
    const rows = await pen.tx.stock.findMany({
      where: { label: { in: input.labels } },
      select: { id: true, label: true, placeId: true },
    });
    const missing = input.labels.find((label) => !rows.some((row) => row.label === label));
    if (missing) return err({ code: 'not-found', facts: { label: missing } });
    const elsewhere = rows.filter((row) => row.placeId !== place.id);
    if (elsewhere.length === 0) return err({ code: 'same-place', facts: { place: place.name } });
    const answer = { moved: elsewhere.map((row) => row.label ?? ''), place: place.name, entryId: pen.entryId };
    await pen.enter({ placeId: place.id, why: `to ${place.name}` }, answer);
    for (const row of elsewhere) {
      const moved = await pen.move(row.id, { placeId: place.id });
      if (!moved.ok) return moved;
    }
    return ok(answer);
  });
