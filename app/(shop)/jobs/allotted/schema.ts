import { z } from 'zod';
import type { Reserve } from '@/app/_server/promises/reserve';
import { thingLabel } from '@/app/(shop)/_parts/acts/schemas';

const id = z.int().positive();

/** What is promised to a job as it was worked out: each tin with its amount, for the need it is for. */
export const promiseSchema: z.ZodType<Reserve> = z.object({
  jobId: id,
  items: z
    .array(z.object({ label: thingLabel, amount: z.int().positive(), needId: id }))
    .min(1, 'There is nothing to promise.')
    .max(500),
});

/** One tin of one need, by the numbers the page has. */
export const choiceSchema = z.object({ needId: z.string().max(20), containerId: z.string().max(20) });
