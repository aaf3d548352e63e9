import { z } from 'zod';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { readMoisture, sayMoistureError } from '@/shared/wood/read-moisture';

export const giveSchema = z.object({
  label: thingLabel,
  act: z.enum(['promise', 'take', 'free']),
  jobId: z.int({ message: 'Choose the job.' }).positive().optional(),
});

/** A moisture reading as typed. */
export function readingSchema(typing: Typing) {
  return z
    .object({ label: thingLabel, takenOn: words(60), moisture: words(20), meter: words(80), spot: words(120) })
    .transform(({ moisture, ...typed }, context) => {
      const read = readFields(typing, context);
      const takenOn = read.day('takenOn', typed.takenOn);
      if (typed.takenOn.trim() === '') read.say('takenOn', 'Give the day it was read.');
      const mc = readMoisture(moisture);
      if (!mc.ok) read.say('moisture', sayMoistureError(mc.error));
      if (!takenOn || !mc.ok) return z.NEVER;
      return { ...typed, takenOn, mcTenths: mc.value, meter: typed.meter.trim(), spot: typed.spot.trim() };
    });
}
