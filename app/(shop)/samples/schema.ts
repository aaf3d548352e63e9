import { z } from 'zod';
import { picture, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

const id = z.int().positive();
/** As far ahead as a look is planned, days. */
const MOST_DAYS = 3650;

/** The day so many days after one; undefined where nothing was typed. */
function daysAfter(
  day: CalendarDate | undefined,
  text: string,
  read: ReturnType<typeof readFields>,
  field: string,
): CalendarDate | undefined {
  if (text.trim() === '') return undefined;
  const days = read.count(field, text, MOST_DAYS);
  return day && days ? addDays(day, days) : undefined;
}

/** A sample to be kept, as typed. */
export function keepSampleSchema(typing: Typing) {
  return z
    .object({
      name: z.string().trim().min(1, 'Give it a name, for example River desk, lift 2.').max(120, 'That is too long.'),
      liftId: id.optional(),
      lotAId: id.optional(),
      lotBId: id.optional(),
      placeLabel: z
        .string()
        .regex(/^P[0-9A-Z]{6}$/)
        .optional(),
      madeOn: words(60),
      days: words(10),
      note: words(500),
    })
    .transform(({ days, ...typed }, context) => {
      const read = readFields(typing, context);
      const madeOn = read.day('madeOn', typed.madeOn);
      if (typed.madeOn.trim() === '') read.say('madeOn', 'Give the day it was made.');
      const lookOn = daysAfter(madeOn, days, read, 'days');
      return madeOn ? { ...typed, madeOn, lookOn } : z.NEVER;
    });
}

/** What a sample looks like, as typed. */
export function lookSchema(typing: Typing) {
  return z
    .object({
      sampleId: id,
      lookedOn: words(60),
      result: z.enum(['sound', 'soft', 'yellowed', 'cracked', 'other'], 'Say what it is like.'),
      note: words(500),
      days: words(10),
      photo: picture.optional(),
    })
    .transform(({ days, ...typed }, context) => {
      const read = readFields(typing, context);
      const lookedOn = read.day('lookedOn', typed.lookedOn);
      if (typed.lookedOn.trim() === '') read.say('lookedOn', 'Give the day.');
      const nextOn = daysAfter(lookedOn, days, read, 'days');
      return lookedOn ? { ...typed, lookedOn, nextOn } : z.NEVER;
    });
}

export const goneSchema = z.object({ sampleId: id, why: words(300) });
