import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { type KeptSizes, loadToMeasure } from '@/app/_server/shapes/load-to-measure';
import { offTheWood } from '@/app/_server/shapes/off-the-wood';
import { saySizes } from '@/app/_server/shapes/say-sizes';
import { setShape } from '@/app/_server/shapes/set-shape';
import { sizesOfOutline } from '@/app/_server/shapes/sizes-of-outline';
import { outlineFromStations } from '@/shared/outline/outline-from-stations';
import { countMarks } from '@/shared/outline/piece-marks';
import type { ChalkLine } from '@/shared/outline/station';
import { err, ok } from '@/shared/result/result';

/** The outline of a piece as it was measured down a chalk line. Lengths in nanometres. */
export type MeasureByStations = {
  label: string;
  chalkLine: ChalkLine;
  /** Needed where it was measured before: somebody later will ask why it is another shape. */
  why: string;
};

/**
 * How many marks it has, to be looked at on the new outline, and how many of them do not lie on the wood as it is measured
 * now. They stay on the piece until somebody takes them off.
 */
export type Measured = { label: string; marks: number; marksOff: number; before: KeptSizes };

export const measureByStations: Command<MeasureByStations, Measured> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'piece-measured', request: input }, async (pen) => {
    const piece = await loadToMeasure(pen, input);
    if (!piece.ok) return piece;
    const made = outlineFromStations(input.chalkLine);
    if (!made.ok) {
      const { code, gap, station, value } = made.error;
      return err({ code: 'no-outline', field: 'chalkLine', facts: { why: code, gap: gap ?? null, station, value } });
    }
    const { stockId, marks, before } = piece.value;
    const answer = { label: input.label, marks: countMarks(marks), marksOff: offTheWood(made.value, marks), before };
    const sizes = saySizes(sizesOfOutline(made.value, input.chalkLine), pen.book.units);
    const count = input.chalkLine.stations.length;
    await pen.enter({ stockId, why: `at ${count} stations: ${sizes}. ${input.why.trim()}`.trim() }, answer);
    await setShape(pen, stockId, { source: 'stations', outline: made.value, chalkLine: input.chalkLine });
    return ok(answer);
  });
