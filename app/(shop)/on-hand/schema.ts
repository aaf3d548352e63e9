import { z } from 'zod';
import { PIECE_FORMS } from '@/shared/wood/piece';

export const findSchema = z.object({
  query: z.string().max(100),
  show: z.enum(['materials', 'wood']),
  withEmpty: z.boolean(),
  wood: z
    .object({
      form: z.enum(['', ...PIECE_FORMS]),
      species: z.string().max(100),
      free: z.boolean(),
      thick: z.string().max(100),
      long: z.string().max(100),
    })
    .optional(),
  after: z.number().int().positive().optional(),
});
