import type { Pen } from '@/app/_server/ledger/write-entry';
import { writeChalkLine, writeOutline } from '@/app/_server/shapes/kept-outline';
import { sizesOfOutline } from '@/app/_server/shapes/sizes-of-outline';
import type { Outline } from '@/shared/outline/outline';
import type { ChalkLine } from '@/shared/outline/station';

/** A measuring to be kept: where it came from and what it found. Places in micrometres. */
export type NewShape = { readonly outline: Outline } & (
  | { readonly source: 'stations'; readonly chalkLine: ChalkLine }
  | { readonly source: 'cut' }
  | {
      readonly source: 'photo';
      readonly photoId: number;
      readonly photoPlace: {
        readonly left: number;
        readonly right: number;
        readonly bottom: number;
        readonly top: number;
      };
      readonly errorUm: number;
    }
);

/**
 * Keeps a measuring of a piece as the one that counts from now on; the ones before stay. Its length and widths, which
 * lists, labels and searches go by, become those of the outline. Inside an entry that is written already.
 */
export async function setShape(pen: Pen, stockId: number, shape: NewShape): Promise<number> {
  const chalkLine = shape.source === 'stations' ? shape.chalkLine : undefined;
  const photo = shape.source === 'photo' ? shape : undefined;
  const { id } = await pen.tx.shape.create({
    data: {
      pieceId: stockId,
      entryId: pen.entryId,
      source: shape.source,
      outline: writeOutline(shape.outline),
      chalkLine: chalkLine ? writeChalkLine(chalkLine) : null,
      photoId: photo?.photoId ?? null,
      photoPlace: photo ? JSON.stringify(photo.photoPlace) : null,
      photoErrorUm: photo?.errorUm ?? null,
    },
    select: { id: true },
  });
  await pen.tx.piece.update({
    where: { stockId },
    data: { shapeId: id, ...sizesOfOutline(shape.outline, chalkLine) },
    select: { stockId: true },
  });
  return id;
}
