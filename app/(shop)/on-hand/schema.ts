import { z } from 'zod';

export const findSchema = z.object({
  query: z.string().max(100),
  show: z.enum(['materials', 'wood']),
  withEmpty: z.boolean(),
  after: z.number().int().positive().optional(),
});
