import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { loadToMeasure } from '@/app/_server/shapes/load-to-measure';
import type { Measured } from '@/app/_server/shapes/measure-by-stations';
import { offTheWood } from '@/app/_server/shapes/off-the-wood';
import { saySizes } from '@/app/_server/shapes/say-sizes';
import { setShape } from '@/app/_server/shapes/set-shape';
import { sizesOfOutline } from '@/app/_server/shapes/sizes-of-outline';
import { straightenPhoto, type ToStraighten } from '@/app/_server/shapes/straighten-photo';
import { judgeUpload, refusedUnpacked } from '@/app/_server/stock/judge-upload';
import { type KeptPhoto, keepPhoto, whatPhotoIs } from '@/app/_server/stock/keep-photo';
import { withPhoto } from '@/app/_server/stock/with-photo';
import { writePhotoFile } from '@/app/_server/stock/write-photo-file';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import { outlineFromPhoto, type PhotoMeasuring } from '@/shared/outline/outline-from-photo';
import { photoDoubt } from '@/shared/outline/photo-doubt';
import { countMarks } from '@/shared/outline/piece-marks';
import { sayMiss } from '@/shared/outline/say-miss';
import { LEAST_MEASURED_SIDE } from '@/shared/photos/photo-limits';
import { err, ok, type Result } from '@/shared/result/result';

/** The outline of a piece as it was tapped on a photo. */
export type MeasureByPhoto = {
  label: string;
  photo: Blob;
  /** How large the photo was where it was tapped, pixels. */
  seen: { width: number; height: number };
  measuring: PhotoMeasuring;
  /** Needed where it was measured before. */
  why: string;
};

/** So much of the slab's length is shown around it. */
const AROUND = 0.02;

/** Keeps the outline and, straightened, the photo it was tapped on: both or neither. */
export const measureByPhoto: Command<MeasureByPhoto, Measured> = async (book, by, { photo, ...input }) => {
  const made = outlineFromPhoto(input.measuring);
  if (!made.ok) return err({ code: 'photo-does-not-fit', field: 'measuring', facts: { why: made.error.code } });
  const { outline, map, marks } = made.value;
  const place = around(outline);
  const doubt = photoDoubt(marks, input.measuring.edge);
  const write = (kept: KeptPhoto | undefined) =>
    writeEntry(
      book,
      { ...by, kind: 'piece-measured', request: { ...input, photo: whatPhotoIs(kept) } },
      async (pen) => {
        const piece = await loadToMeasure(pen, input);
        if (!piece.ok) return piece;
        if (!kept) return err({ code: 'photo-not-an-image', field: 'photo' });
        const { stockId, marks: on, before } = piece.value;
        const prefer = pen.book.units === 'metric' ? 'metric' : 'imperial';
        const answer = { label: input.label, marks: countMarks(on), marksOff: offTheWood(outline, on), before };
        const sizes = saySizes(sizesOfOutline(outline), pen.book.units);
        const off = `true to ${sayMiss(doubt.atMarks, prefer)} at the sheet and ${sayMiss(doubt.most, prefer)} where it is furthest from it`;
        const why = `from a photo, ${off}: ${sizes}. ${input.why.trim()}`.trim();
        await pen.enter({ stockId, why }, answer);
        const photoId = await keepPhoto(pen, stockId, kept);
        const errorUm = Math.round(doubt.most * 1000);
        await setShape(pen, stockId, { source: 'photo', outline, photoId, photoPlace: place, errorUm });
        return ok(answer);
      },
    );
  return withPhoto(photo, 'Seen from straight above, to scale', write, (upload, caption) =>
    receiveStraightened(upload, caption, { size: input.seen, map, place }),
  );
};

async function receiveStraightened(
  upload: Buffer,
  caption: string,
  how: ToStraighten,
): Promise<Result<KeptPhoto, Refusal>> {
  const judged = await judgeUpload(upload);
  if (!judged.ok) return judged;
  const { width, height } = judged.value;
  if (Math.min(width, height) < LEAST_MEASURED_SIDE)
    return err({ code: 'photo-too-small', field: 'photo', facts: { width, height, least: LEAST_MEASURED_SIDE } });
  // Another size is another picture, or one held another way: the marks would lie elsewhere on it.
  if (width !== how.size.width || height !== how.size.height)
    return err({ code: 'photo-is-another', field: 'photo', facts: { width, height } });
  const straight = await straightenPhoto(upload, how).catch(() => undefined);
  return straight ? ok(await writePhotoFile(straight, caption)) : refusedUnpacked(judged.value);
}

function around({ ring }: Outline): ReturnType<typeof boundsOf> {
  const { left, right, bottom, top } = boundsOf(ring);
  const room = Math.round((right - left) * AROUND);
  return { left: left - room, right: right + room, bottom: bottom - room, top: top + room };
}
