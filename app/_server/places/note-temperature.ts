import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { placeAndBelow } from '@/app/_server/places/place-and-below';
import { joinConditions, splitConditions } from '@/app/_server/stock/conditions';
import { err, ok } from '@/shared/result/result';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

/** The coldest and warmest a place has been, tenths of °C. */
export type NoteTemperature = { label: string; leastTenthsC: number; mostTenthsC: number };

/**
 * Notes how cold and warm a place has been, and marks every container in it (and in the places inside it) whose product
 * states a narrower range. Whether something froze is for a person to see on the container.
 */
export const noteTemperature: Command<NoteTemperature, { marked: string[] }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'temperature-noted', request: input }, async (pen) => {
    if (input.leastTenthsC > input.mostTenthsC) return err({ code: 'outside-range', field: 'mostTenthsC' });
    const place = await pen.tx.place.findUnique({ where: { label: input.label }, select: { id: true } });
    if (!place) return err({ code: 'not-found' });
    const rows = await pen.tx.stock.findMany({
      where: {
        kind: 'container',
        quantity: { gt: 0 },
        placeId: { in: await placeAndBelow(pen.tx, place.id) },
        container: {
          product: {
            OR: [
              { storageLeastTenthsC: { gt: input.leastTenthsC } },
              { storageMostTenthsC: { lt: input.mostTenthsC } },
            ],
          },
        },
      },
      select: { id: true, label: true, condition: true },
    });
    const marked = rows.filter((row) => !splitConditions(row.condition).includes('stored-out-of-range'));
    const answer = { marked: marked.flatMap((row) => row.label ?? []) };
    const prefer = pen.book.units === 'imperial' ? 'imperial' : 'metric';
    const said = [input.leastTenthsC, input.mostTenthsC].map((each) =>
      printTemperature(tenthsCelsius(each), { prefer }),
    );
    const why = said.join(' to ');
    await pen.enter({ placeId: place.id, why }, answer);
    for (const row of marked) {
      const condition = joinConditions([...splitConditions(row.condition), 'stored-out-of-range']);
      const moved = await pen.move(row.id, { condition });
      if (!moved.ok) return moved;
    }
    return ok(answer);
  });
