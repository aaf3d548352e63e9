import type { Nanometres } from '@/shared/units/nanometres';
import type { UnitSystem } from '@/shared/units/unit-system';

const SQUARE_FOOT_M2 = 0.09290304;

/** The area of sheets, each and all together: `2.98 m² each, 8.93 m² in all`. A square foot is 0.09290304 m² exactly. */
export function saySheets(
  { lengthNm, widthMiddleNm }: { lengthNm: Nanometres; widthMiddleNm: Nanometres },
  count: number,
  prefer: UnitSystem,
): string {
  const squareMetres = (lengthNm / 1e9) * (widthMiddleNm / 1e9);
  const say = (area: number) =>
    prefer === 'metric' ? `${area.toFixed(2)} m²` : `${(area / SQUARE_FOOT_M2).toFixed(1)} sq ft`;
  const each = say(squareMetres);
  return count > 1 ? `${each} each, ${say(squareMetres * count)} in all.` : `${each}.`;
}
