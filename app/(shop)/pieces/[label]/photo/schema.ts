import { z } from 'zod';
import type { MeasureByPhoto } from '@/app/_server/shapes/measure-by-photo';
import { picture, thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import type { Typing } from '@/app/(shop)/arrive/read-fields';
import { MOST_GAPS, MOST_POINTS } from '@/app/(shop)/pieces/[label]/photo/most-points';
import {
  measuringOf,
  OWN_FIELDS,
  REFERENCES,
  readReference,
  TAPE_FIELDS,
} from '@/app/(shop)/pieces/[label]/photo/typed-measuring';
import { LONGEST_PHOTO_SIDE } from '@/shared/photos/photo-limits';

const along = z.number().min(0).max(LONGEST_PHOTO_SIDE);
const pixel = z.object({ x: along, y: along });
const ring = z.array(pixel).max(MOST_POINTS, `Tap no more than ${MOST_POINTS} points.`);
const side = z.int().min(1).max(LONGEST_PHOTO_SIDE);

/** A photo and what was tapped on it. */
export function photoMeasureSchema({ prefer }: Typing): z.ZodType<MeasureByPhoto> {
  return z
    .object({
      label: thingLabel,
      why: words(500),
      photo: picture,
      seen: z.object({ width: side, height: side }),
      reference: z.enum(REFERENCES),
      sizes: z.record(z.enum([...OWN_FIELDS, ...TAPE_FIELDS]), words(40)),
      otherWay: z.boolean(),
      marks: z.array(pixel).length(4, 'Mark all four first.'),
      edge: ring,
      gaps: z.array(ring).max(MOST_GAPS, `Mark no more than ${MOST_GAPS} gaps.`),
      fromOtherEnd: z.boolean(),
    })
    .transform(({ label, why, photo, seen, ...typed }, context) => {
      const { problems } = readReference(typed, prefer);
      for (const [key, message] of Object.entries(problems)) context.addIssue({ code: 'custom', path: [key], message });
      const measuring = measuringOf(typed, prefer);
      return measuring ? { label, why, photo, seen, measuring } : z.NEVER;
    });
}
