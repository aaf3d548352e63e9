import { z } from 'zod';

const id = z.number().int().positive();

const historyOfSchema = z.object({ stockId: id, lotId: id, productId: id, placeId: id, jobId: id }).partial().strict();

export const olderSchema = z.object({ of: historyOfSchema, before: id });

export const reverseSchema = z.object({
  entryId: id,
  why: z
    .string()
    .trim()
    .min(1, 'Write why, in a few words; it stays in the history.')
    .max(500, 'That is too long. A few words will do.'),
});
