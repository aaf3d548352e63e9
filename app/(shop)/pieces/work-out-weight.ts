import { faceAndVolume } from '@/app/(shop)/pieces/face-and-volume';
import { type FiguredPiece, newestReadings } from '@/app/(shop)/pieces/figured-piece';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { ok, type Result } from '@/shared/result/result';
import type { Explained, How } from '@/shared/wood/explained';
import { type LiftingCaution, liftingCaution } from '@/shared/wood/lifting-caution';
import { massAtMoisture } from '@/shared/wood/mass-at-moisture';
import { takenAs } from '@/shared/wood/moisture-reading';
import type { Species } from '@/shared/wood/species';
import { type DensityOfWoodError, FIBRE_SATURATION, specificGravityAt, woodDensity } from '@/shared/wood/wood-density';
import { woodMass } from '@/shared/wood/wood-mass';

/** What indoor furniture is commonly dried to, per cent. Common practice. */
export const DRY_ENOUGH = 8;

export type PieceWeight = {
  /** The moisture it was weighed at: its wettest newest reading, or 30 % where it was never read. */
  readonly mc: number;
  /** The day of that reading; null where it was never read. */
  readonly readOn: CalendarDate | null;
  readonly now: Explained<number>;
  /** Every step that led to what it weighs now, the last one first. */
  readonly steps: readonly How[];
  readonly dry: Explained<number>;
  readonly lifting: Explained<LiftingCaution>;
};

export type WeightTrouble = DensityOfWoodError | { readonly code: 'which-wood' } | { readonly code: 'made-sheet' };

/** The moisture a piece is weighed at, and the day it was read; 30 % where it never was. */
export function weighedAt(piece: FiguredPiece): Pick<PieceWeight, 'mc' | 'readOn'> {
  const newest = newestReadings(piece);
  return { mc: newest ? takenAs(newest.wettest) / 10 : FIBRE_SATURATION, readOn: newest?.on ?? null };
}

/**
 * What a piece weighs now and dried to 8 %, and whether so many people may lift it. Now is as it was last read. The volume was measured as it
 * stands, so now is reckoned first and the water taken off it. Never read, it is reckoned at 30 %, where wood is full and
 * no longer shrinks: heavier than anything dry, though green wood can be heavier still. A sheet is glued and pressed, and
 * the figures of solid wood do not hold for it.
 */
export function workOutWeight(
  piece: FiguredPiece,
  species: Species | null,
  people: number,
): Result<PieceWeight, WeightTrouble> {
  if (piece.form === 'sheet') return { ok: false, error: { code: 'made-sheet' } };
  if (!species) return { ok: false, error: { code: 'which-wood' } };
  const { mc, readOn } = weighedAt(piece);
  const gravity = specificGravityAt(species, mc);
  if (!gravity.ok) return gravity;
  const density = woodDensity(species, mc);
  if (!density.ok) return density;
  const { squareMetres, cubicMetres } = faceAndVolume(piece);
  const now = woodMass(species, cubicMetres.value, mc);
  if (!now.ok) return now;
  return ok({
    mc,
    readOn,
    now: now.value,
    steps: [now.value, density.value, gravity.value, cubicMetres, squareMetres].map(({ how }) => how),
    dry: massAtMoisture(now.value.value, mc, DRY_ENOUGH),
    lifting: liftingCaution(now.value.value, people),
  });
}
