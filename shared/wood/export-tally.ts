import type { TalliedBoard } from '@/shared/wood/tally-boards';

const INCH = 25_400_000n;
const FOOT = 12n * INCH;

export type ExportTallyLine = { readonly widthInches: number; readonly lengthFeet: number };

/**
 * A bundle tally for export: each width to the nearest whole inch, exact half inches up and down in turn beginning with
 * up; each length down to the whole foot. American Hardwood Export Council, measurement. 5 1/4 in by 8 1/2 ft is
 * tallied 5 in by 8 ft.
 */
export function exportTally(boards: readonly TalliedBoard[]): readonly ExportTallyLine[] {
  let goesUp = true;
  return boards.map(({ width, length }) => {
    const twiceRest = 2n * (BigInt(width) % INCH);
    const half = twiceRest === INCH;
    const up = half ? goesUp : twiceRest > INCH;
    if (half) goesUp = !goesUp;
    return {
      widthInches: Number(BigInt(width) / INCH + (up ? 1n : 0n)),
      lengthFeet: Number(BigInt(length) / FOOT),
    };
  });
}
