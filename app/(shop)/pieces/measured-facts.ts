import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { Fact } from '@/app/_ui/facts';
import { BOARD_FOOT_MM3 } from '@/app/(shop)/pieces/read-volume';
import { outlineArea } from '@/shared/outline/outline-area';
import { outlineVolume } from '@/shared/outline/outline-volume';
import { usableWidths, type WidthAt } from '@/shared/outline/usable-widths';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What the measured outline says of a piece, as terms and values; nothing where it was not measured. */
export function measuredFacts({ shape, thicknessNm }: PieceLine, prefer: UnitSystem): Fact[] {
  if (!shape) return [];
  const { outline } = shape;
  const say = (um: number) => printLength(nanometres(Math.round(um * 1000)), { prefer, style: 'inches' });
  const at = ({ width, at: place }: WidthAt) => `${say(width)}, ${say(place)} along`;
  const widths = usableWidths(outline);
  const area = outlineArea(outline);
  const volume = outlineVolume(outline, thicknessNm);
  const imperial = prefer === 'imperial';
  return [
    { term: 'Face', value: imperial ? `${(area / 92_903.04).toFixed(2)} sq ft` : `${(area / 1e6).toFixed(3)} m²` },
    {
      term: 'Volume',
      value: `${(volume / 1e9).toFixed(4)} m³, that is ${(volume / BOARD_FOOT_MM3).toFixed(1)} board feet`,
    },
    ...(widths
      ? [
          { term: 'Narrowest', value: at(widths.narrowest) },
          { term: 'Widest', value: at(widths.widest) },
        ]
      : []),
  ];
}
