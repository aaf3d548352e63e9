import { z } from 'zod';
import { PIECE_OR_CONTAINER } from '@/app/(shop)/_parts/acts/thing-label';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { HOLD_STATES } from '@/shared/shelf-life/types/lot-facts';
import { parseTemperature } from '@/shared/units/parse-temperature';

const id = z.int().positive();
/** Words as a person types them in one field; longer than this is a slip of pasting. */
export const words = (most = 1000) => z.string().max(most, `At most ${most} characters.`);
export const thingLabel = z.string().regex(PIECE_OR_CONTAINER, 'That is not one of our labels.');

export const moveSchema = z.object({
  labels: z.array(thingLabel).min(1).max(MOST_AT_ONCE),
  placeLabel: z.string().regex(/^P[0-9A-Z]{6}$/, 'Choose the place it goes to.'),
});

export const holdSchema = z.object({ stockId: id, hold: z.enum(HOLD_STATES), why: words(500) });

/** The day something happened as it is typed; undefined where it was today. */
export const happenedOn = words(60).optional();

export function discardSchema(typing: Typing) {
  return z.object({ label: thingLabel, why: words(500), happenedOn }).transform((typed, context) => ({
    ...typed,
    happenedOn: readFields(typing, context).day('happenedOn', typed.happenedOn ?? ''),
  }));
}

export const picture = z.instanceof(File, { message: 'Choose a picture.' });

export const photoSchema = z.object({ stockId: id, photo: picture, caption: words(200) });

/** An inspection or a test pour as it is typed. */
export function inspectionSchema(typing: Typing) {
  return z
    .object({
      lotId: id,
      containerLabel: thingLabel.optional(),
      kind: z.enum(['inspection', 'test-pour']),
      madeOn: words(60),
      outcome: z.enum(['passed', 'failed'], { message: 'Say whether it passed.' }),
      validUntil: words(60),
      method: words(300),
      note: words(1000),
      pairLotId: id.optional(),
      mass: words(40),
      temperature: words(40),
      minutes: words(10),
      result: words(300),
      photo: picture.optional(),
    })
    .transform(({ outcome, mass, temperature, minutes, ...typed }, context) => {
      const read = readFields(typing, context);
      const madeOn = read.day('madeOn', typed.madeOn);
      if (typed.madeOn.trim() === '') read.say('madeOn', 'Give the day it was made.');
      const passed = outcome === 'passed';
      const validUntil = passed ? read.day('validUntil', typed.validUntil, 'ahead') : undefined;
      const massMg = read.quantity('mass', mass, 'mg');
      const roomTenthsC = readTemperature(temperature, typing, read);
      const watched = minutes.trim() === '' ? undefined : read.count('minutes', minutes, 9999);
      return madeOn ? { ...typed, madeOn, passed, validUntil, massMg, roomTenthsC, minutes: watched } : z.NEVER;
    });
}

/** A temperature as typed, in tenths of a degree Celsius; undefined where there is none. */
export function readTemperature(
  text: string,
  { prefer }: Typing,
  read: Pick<ReturnType<typeof readFields>, 'say'>,
): number | undefined {
  if (text.trim() === '') return undefined;
  const temperature = parseTemperature(text, { prefer });
  return temperature.ok
    ? temperature.value
    : read.say('temperature', 'Give a temperature, for example 21 °C or 70 °F.');
}
