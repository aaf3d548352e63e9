import type { Command } from '@/app/_server/act';
import { isPossible } from '@/app/_server/climate/log-air';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';
import { printTemperature } from '@/shared/units/print-temperature';
import { tenthsCelsius } from '@/shared/units/tenths-celsius';

/** The usual air of a place from a month on. */
export type SetSeason = { label: string; name: string; fromMonth: number; tenthsC: number; humidityTenths: number };

/** Sets the usual air of a place from a month on, until the next season begins; one that began in that month gives way. */
export const setSeason: Command<SetSeason, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'season-set', request: input }, async (pen) => {
    const { label, fromMonth, tenthsC, humidityTenths } = input;
    const name = input.name.trim();
    const place = await pen.tx.place.findUnique({ where: { label }, select: { id: true } });
    if (!place) return err({ code: 'not-found' });
    if (name === '') return err({ code: 'outside-range', field: 'name' });
    if (!Number.isInteger(fromMonth) || fromMonth < 1 || fromMonth > 12)
      return err({ code: 'outside-range', field: 'fromMonth' });
    if (!isPossible(input)) return err({ code: 'outside-range', field: 'humidity' });
    const before = await pen.tx.roomSeason.findFirst({
      where: { placeId: place.id, fromMonth, removedById: null },
      select: { id: true, name: true, tenthsC: true, humidityTenths: true },
    });
    if (before?.name === name && before.tenthsC === tenthsC && before.humidityTenths === humidityTenths)
      return err({ code: 'changes-nothing' });
    const prefer = pen.book.units === 'imperial' ? 'imperial' : 'metric';
    const why = `${name}, ${printTemperature(tenthsCelsius(tenthsC), { prefer })}, ${humidityTenths / 10} %`;
    await pen.enter({ placeId: place.id, why }, { label });
    if (before) {
      await pen.tx.roomSeason.update({
        where: { id: before.id },
        data: { removedById: pen.entryId },
        select: { id: true },
      });
    }
    await pen.tx.roomSeason.create({
      data: { placeId: place.id, entryId: pen.entryId, name, fromMonth, tenthsC, humidityTenths },
      select: { id: true },
    });
    return ok({ label });
  });
