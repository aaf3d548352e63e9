import { z } from 'zod';
import type { LotDatesInput } from '@/app/_server/stock/lot-dates';
import type { ReceiveContainers } from '@/app/_server/stock/receive-containers';
import { DATE_NAMES } from '@/app/(shop)/arrive/card';
import { openingOf } from '@/app/(shop)/arrive/opening-of';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { CONDITIONS } from '@/shared/shelf-life/types/container-facts';

const words = (most: number) => z.string().max(most, `At most ${most} characters.`);
const date = z.object({ text: words(60), confirmed: z.boolean() });

/** What a scan sends to be looked up. */
export const scanSchema = z.object({ text: z.string().max(8192), symbology: z.string().max(8).optional() });

/** The arrival card as it is typed. */
const typedArrival = z.object({
  productId: z.int(),
  unit: z.enum(['mg', 'uL', 'piece']),
  lot: words(60),
  dates: z.object({ useBy: date, bestBefore: date, madeOn: date }),
  count: words(20),
  size: words(60),
  cost: words(60),
  placeLabel: words(20),
  receivedOn: words(60),
  /** Whether it came open: part-used, or bought from somebody. */
  isOpened: z.boolean(),
  openedOn: words(60),
  sureness: z.enum(['known', 'guessed']),
  left: words(60),
  conditions: z.array(z.enum(CONDITIONS)).max(CONDITIONS.length),
  openedLifeCount: words(10),
  openedLifeUnit: words(10),
  quarantine: z.boolean(),
  reference: words(120),
});

const NO_OPENING =
  'Give the day it was opened, as near as you know. If nobody knows, the earliest it can have been. A month will do.';

export type TypedArrival = z.input<typeof typedArrival>;

/** Reads the arrival card again where it is written: nothing of what the screen understood is trusted. */
export function arrivalSchema(typing: Typing): z.ZodType<ReceiveContainers> {
  return typedArrival.transform((typed, context) => {
    const read = readFields(typing, context);
    const dates: LotDatesInput = {};
    for (const name of DATE_NAMES) {
      const reading = read.date(name, typed.dates[name].text);
      if (reading) dates[name] = { ...reading, confirmed: typed.dates[name].confirmed };
    }
    const count = read.count('count', typed.count);
    const size = read.quantity('size', typed.size, typed.unit);
    if (typed.size.trim() === '') read.say('size', 'Type what one holds when full, for example 2.5 kg.');
    const receivedOn = typed.receivedOn.trim() === '' ? typing.today : read.day('receivedOn', typed.receivedOn);
    // What is left of a full one, or a day, says that it was opened too.
    const isOpened = [typed.openedOn, typed.left].some((text) => text.trim() !== '') || typed.isOpened;
    if (isOpened && typed.openedOn.trim() === '') read.say('openedOn', NO_OPENING);
    const openedOn = read.date('openedOn', typed.openedOn, 'past');
    const arrival = {
      productId: typed.productId,
      unit: typed.unit,
      lotCode: typed.lot.trim() || null,
      dates,
      left: read.quantity('left', typed.left, typed.unit),
      openedLife: read.life('openedLifeCount', typed.openedLifeCount, typed.openedLifeUnit),
      costMinor: read.money('cost', typed.cost),
      placeLabel: typed.placeLabel || undefined,
      opened: openedOn && openingOf(openedOn, typed.sureness),
      conditions: typed.conditions,
      hold: typed.quarantine ? ('quarantine' as const) : ('free' as const),
      reference: typed.reference.trim() || undefined,
    };
    // Whatever is missing here has been said beside its field above.
    if (count === undefined || size === undefined || receivedOn === undefined) return z.NEVER;
    return { ...arrival, count, size, receivedOn };
  });
}
