import type { SellerFigures } from '@/app/_server/shapes/seller-figures';
import { faceAndVolume } from '@/app/(shop)/pieces/face-and-volume';
import type { FiguredPiece } from '@/app/(shop)/pieces/figured-piece';
import { BOARD_FOOT_MM3 } from '@/app/(shop)/pieces/read-volume';
import { sayMass } from '@/app/(shop)/pieces/say-mass';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** One figure of the seller's beside ours. */
export type SellerRow = {
  readonly term: string;
  readonly ours: string;
  readonly theirs: string;
  readonly difference: string;
};

/** What is known of the piece by our own measuring; widest width, mass and moisture where they are known. */
export type OurFigures = {
  readonly widest: Nanometres;
  readonly kilograms: number | null;
  readonly mcTenths: number | null;
};

/** What the seller said beside what we measured, a row for each figure that was said. */
export function compareSeller(
  said: SellerFigures,
  piece: FiguredPiece,
  ours: OurFigures,
  prefer: UnitSystem,
): readonly SellerRow[] {
  const rows: SellerRow[] = [];
  const say = (length: number) => printLength(nanometres(Math.round(length)), { prefer, style: 'inches' });
  const length = (term: string, our: number, their: number | null) => {
    if (their === null) return;
    const by = their - our;
    rows.push({
      term,
      ours: say(our),
      theirs: say(their),
      difference: by === 0 ? 'the same' : `${say(Math.abs(by))} ${by > 0 ? 'more' : 'less'}`,
    });
  };
  const number = (
    term: string,
    our: number | null,
    their: number | null,
    print: (amount: number) => string,
    unit = '',
  ) => {
    if (their === null) return;
    const by = our === null ? null : their - our;
    const share = our === null || our === 0 || by === null ? '' : ` (${Math.round((Math.abs(by) / our) * 100)} %)`;
    rows.push({
      term,
      ours: our === null ? 'not known' : print(our),
      theirs: print(their),
      difference:
        by === null
          ? ''
          : print(Math.abs(by)) === print(0)
            ? 'the same'
            : `${print(Math.abs(by))}${unit} ${by > 0 ? 'more' : 'less'}${share}`,
    });
  };
  length('Length', piece.size.length, said.lengthNm);
  length('Width, at the widest', ours.widest, said.widthNm);
  length('Thickness', piece.size.thickness, said.thicknessNm);
  const cubicMm = faceAndVolume(piece).cubicMetres.value * 1e9;
  number('Volume', cubicMm, said.volumeMm3, (mm3) =>
    prefer === 'imperial' ? `${(mm3 / BOARD_FOOT_MM3).toFixed(1)} bf` : `${(mm3 / 1e9).toFixed(4)} m³`,
  );
  number('Weight', ours.kilograms, said.massMg === null ? null : said.massMg / 1e6, (kg) => sayMass(kg, prefer));
  if (said.mcTenths !== null) {
    const by = ours.mcTenths === null ? null : said.mcTenths - ours.mcTenths;
    rows.push({
      term: 'Moisture',
      ours: ours.mcTenths === null ? 'not read' : `${ours.mcTenths / 10} %`,
      theirs: `${said.mcTenths / 10} %`,
      difference:
        by === null ? '' : by === 0 ? 'the same' : `${Math.abs(by) / 10} points ${by > 0 ? 'wetter' : 'drier'}`,
    });
  }
  return rows;
}
