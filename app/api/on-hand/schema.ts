import { z } from 'zod';

/** The question for what is on hand, as it stands in the address. */
export const onHandQuery = z.object({
  q: z.string().max(200, 'Search for at most 200 characters.').default(''),
  show: z.enum(['materials', 'wood'], { error: 'Show materials or wood.' }).default('materials'),
  after: z.coerce
    .number({ error: 'A page begins after a whole number.' })
    .int('A page begins after a whole number.')
    .positive('A page begins after 1 or more.')
    .optional(),
  empty: z.enum(['1'], { error: 'Give empty=1 to see what is used up too.' }).optional(),
});
