import { z } from 'zod';
import type { FaultFields } from '@/app/_server/faults/record-fault';
import { picture, thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { readPoints } from '@/app/(shop)/pieces/[label]/marks/read-points';
import { FAULT_KINDS } from '@/shared/faults/fault-kinds';
import { nanometres } from '@/shared/units/nanometres';

const id = z.int().positive();

/** A fault as it is typed: its place is a point as on the marks of a piece, its depth a length. */
export function faultSchema(typing: Typing): z.ZodType<FaultFields & { photo?: File }> {
  return z
    .object({
      kind: z.enum(FAULT_KINDS, { message: 'Say what is wrong.' }),
      foundOn: words(60),
      jobId: id.optional(),
      liftId: id.optional(),
      label: thingLabel.optional(),
      place: words(80),
      depth: words(40),
      note: words(1000),
      photo: picture.optional(),
    })
    .transform(({ place, depth, ...typed }, context) => {
      const read = readFields(typing, context);
      const foundOn = read.day('foundOn', typed.foundOn);
      if (typed.foundOn.trim() === '') read.say('foundOn', 'Give the day it was found.');
      const deep = read.length('depth', depth, 'thickness');
      const points = readPoints(place, typing.prefer);
      if (!points.ok) read.say('place', points.says);
      else if (points.points.length > 1) read.say('place', 'Give one point.');
      return foundOn
        ? {
            ...typed,
            foundOn,
            place: points.ok ? points.points[0] : undefined,
            depth: deep === undefined ? undefined : nanometres(deep),
          }
        : z.NEVER;
    });
}

export const settleSchema = z.object({ faultId: id, how: words(500) });
