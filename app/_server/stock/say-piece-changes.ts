import { keptFlags, PIECE_SIZES, type PieceColumns } from '@/app/_server/stock/piece-fields';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';
import { PIECE_FLAG_WORDS } from '@/shared/wood/piece-flag-words';

const SIZE_WORDS: Record<(typeof PIECE_SIZES)[number], string> = {
  lengthNm: 'length',
  widthStartNm: 'width at the start',
  widthMiddleNm: 'width in the middle',
  widthEndNm: 'width at the end',
  thicknessNm: 'thickness',
};

/** Each change of a piece as a person reads it: `length: 3,000 mm → 2,950 mm`, `seen on it: strapped → nothing`. */
export function sayPieceChanges(before: PieceColumns, after: PieceColumns, prefer: UnitSystem): string[] {
  const changed = (name: string, was: string, is: string) => (was === is ? [] : [`${name}: ${was} → ${is}`]);
  const said = (length: bigint) => {
    const short = printLength(nanometres(length), { prefer, denominator: 64, style: 'inches' });
    return short.startsWith('≈') ? printLengthExact(nanometres(length), prefer) : short;
  };
  const sizes = isStraight(before) && isStraight(after) ? (['lengthNm', 'widthStartNm', 'thicknessNm'] as const) : null;
  return [
    ...changed('wood', before.species, after.species),
    ...(sizes ?? PIECE_SIZES).flatMap((size) =>
      changed(sizes && size === 'widthStartNm' ? 'width' : SIZE_WORDS[size], said(before[size]), said(after[size])),
    ),
    ...changed('seen on it', sayFlags(before.flags), sayFlags(after.flags)),
    ...changed('flitch', before.flitch || 'none', after.flitch || 'none'),
    ...changed('number in the flitch', String(before.flitchNumber ?? 'none'), String(after.flitchNumber ?? 'none')),
    ...changed('origin', before.origin || 'none', after.origin || 'none'),
    ...changed('sapwood', saySapwood(before.sapwoodNm, said), saySapwood(after.sapwoodNm, said)),
    ...changed('sold as', saySold(before), saySold(after)),
    ...changed('grain', before.grain || 'not said', after.grain || 'not said'),
    ...changed('face A', before.faceA || 'not said', after.faceA || 'not said'),
    ...changed('face B', before.faceB || 'not said', after.faceB || 'not said'),
    ...changed('note', before.note || 'none', after.note || 'none'),
  ];
}

const saySapwood = (nm: bigint | null, said: (nm: bigint) => string) => (nm === null ? 'not measured' : said(nm));

const saySold = ({ quarters, surfacing }: PieceColumns) =>
  [quarters === null ? '' : `${quarters}/4`, surfacing].filter(Boolean).join(' ') || 'not said';

const isStraight = ({ widthStartNm, widthMiddleNm, widthEndNm }: PieceColumns) =>
  widthStartNm === widthMiddleNm && widthMiddleNm === widthEndNm;

const sayFlags = (flags: string) =>
  keptFlags(flags)
    .map((flag) => PIECE_FLAG_WORDS[flag])
    .join(', ') || 'nothing';
