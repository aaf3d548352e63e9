import { z } from 'zod';
import type { CorrectLotDates } from '@/app/_server/stock/correct-lot-dates';
import { words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';

const typedDates = z.object({
  lotId: z.int().positive(),
  madeOn: words(60),
  bestBefore: words(60),
  useBy: words(60),
  why: words(500),
});

/** A lot's dates as a person reads them on the label: whoever types them here has looked, so they are confirmed. */
export function lotDatesSchema(typing: Typing): z.ZodType<CorrectLotDates> {
  return typedDates.transform((typed, context) => {
    const read = readFields(typing, context);
    const confirmed = (field: 'madeOn' | 'bestBefore' | 'useBy'): LabelDate | undefined => {
      const date = read.date(field, typed[field]);
      return date && { ...date, confirmed: true };
    };
    return {
      lotId: typed.lotId,
      dates: { madeOn: confirmed('madeOn'), bestBefore: confirmed('bestBefore'), useBy: confirmed('useBy') },
      why: typed.why,
    };
  });
}
