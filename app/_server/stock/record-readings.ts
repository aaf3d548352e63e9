import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { type CorrectedReading, correctReading } from '@/app/_server/stock/correct-reading';
import { saySetting } from '@/app/_server/stock/say-setting';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { err, ok } from '@/shared/result/result';
import { meterKindOf } from '@/shared/wood/meter-words';
import { mostMoistureOfWord } from '@/shared/wood/most-moisture';

/** One reading, as the meter showed it: tenths of a per cent. Lengths in nanometres; null where it was not noted. */
export type NewReading = {
  mcTenths: number;
  spot?: string;
  depthNm?: number | null;
  /** From the start of the chalk line, and from the line itself, left above zero. */
  alongNm?: number | null;
  acrossNm?: number | null;
};

/** The readings of one round over a piece, all with one meter on one day. */
export type RecordReadings = {
  label: string;
  takenOn: CalendarDate;
  meter: string;
  meterKind?: '' | 'pin' | 'pinless';
  speciesSetting?: string;
  woodTenthsC?: number | null;
  /** The meter corrects for the wood's temperature itself. */
  correctsItself?: boolean;
  readings: readonly NewReading[];
};

/** Writes readings of a piece: the raw figure as it was shown and, where the wood's temperature asks for it, what it is taken as. */
export const recordReadings: Command<RecordReadings, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'reading-taken', request: input }, async (pen) => {
    const piece = await pen.tx.piece.findFirst({
      where: { stock: { label: input.label } },
      select: { stockId: true, species: true, form: true, lengthNm: true, thicknessNm: true },
    });
    if (!piece) return err({ code: 'not-found' });
    if (input.takenOn > dateIn(pen.book.timeZone, pen.now))
      return err({ code: 'received-in-the-future', field: 'takenOn' });
    const { label, takenOn, meter, meterKind = '', speciesSetting = '', woodTenthsC = null } = input;
    if (input.readings.length === 0) return err({ code: 'outside-range', field: 'readings.0.moisture' });
    if (input.readings.length > MOST_AT_ONCE) return err({ code: 'absurd-count' });
    const most = piece.form === 'sheet' ? null : mostMoistureOfWord(piece.species);
    const rows: (NewReading & CorrectedReading)[] = [];
    for (const [at, reading] of input.readings.entries()) {
      const refused = refuseReading(reading, at, piece, most);
      if (refused) return err(refused);
      const kind = meterKind || meterKindOf(meter);
      const corrected = correctReading(reading.mcTenths, { ...input, kind, woodTenthsC });
      if (!corrected.ok) return corrected;
      rows.push({ ...reading, ...corrected.value });
    }
    await pen.enter({ why: sayRound(rows, input), stockId: piece.stockId }, { label });
    await pen.tx.reading.createMany({
      data: rows.map(({ mcTenths, spot = '', depthNm, alongNm, acrossNm, correctedTenths }) => ({
        pieceId: piece.stockId,
        entryId: pen.entryId,
        takenOn,
        mcTenths,
        meter,
        meterKind,
        speciesSetting,
        woodTenthsC,
        correctedTenths,
        spot,
        depthNm: wide(depthNm),
        alongNm: wide(alongNm),
        acrossNm: wide(acrossNm),
      })),
    });
    return ok({ label });
  });

const wide = (nm: number | null | undefined) => (nm === null || nm === undefined ? null : BigInt(nm));

function refuseReading(
  { mcTenths, alongNm, depthNm }: NewReading,
  at: number,
  piece: { lengthNm: bigint; thicknessNm: bigint },
  most: number | null,
): Refusal | undefined {
  const field = (name: string) => `readings.${at}.${name}`;
  if (!Number.isInteger(mcTenths) || mcTenths < 0 || mcTenths > 2500)
    return { code: 'outside-range', field: field('moisture') };
  if (most !== null && mcTenths > most)
    return { code: 'wetter-than-possible', field: field('moisture'), facts: { mcTenths, most } };
  if (alongNm !== null && alongNm !== undefined && (alongNm < 0 || alongNm > piece.lengthNm))
    return { code: 'off-the-piece', field: field('along') };
  if (depthNm !== null && depthNm !== undefined && (depthNm < 0 || depthNm > piece.thicknessNm))
    return { code: 'off-the-piece', field: field('depth') };
  return undefined;
}

function sayRound(rows: readonly (NewReading & CorrectedReading)[], input: RecordReadings): string {
  const figures = rows.map(({ mcTenths, correctedTenths }) =>
    correctedTenths === null ? `${mcTenths / 10} %` : `${mcTenths / 10} % (taken as ${correctedTenths / 10} %)`,
  );
  const spot = rows.length === 1 ? rows[0]?.spot : '';
  return [figures.join(', '), saySetting(input), spot].filter(Boolean).join(', ');
}
