import { z } from 'zod';
import { words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';

const id = z.int().positive();

/** An order as it is typed. */
export const addArrivingSchema = (typing: Typing) =>
  z
    .object({
      productId: id.optional(),
      unit: z.enum(['mg', 'uL', 'piece']),
      words: words(200),
      amount: words(60),
      dueOn: words(60),
      supplier: words(120),
      cost: words(60),
    })
    .transform(({ unit, cost, ...typed }, context) => {
      const read = readFields(typing, context);
      const amount = read.quantity('amount', typed.amount, typed.productId === undefined ? 'piece' : unit);
      if (typed.amount.trim() === '') read.say('amount', 'Give how much is coming.');
      else if (amount === 0) read.say('amount', 'It must be more than nothing.');
      if (typed.productId === undefined && typed.words.trim() === '') {
        read.say('words', 'Say what is coming, or choose the product.');
      }
      const dueOn = read.day('dueOn', typed.dueOn, 'ahead');
      if (typed.dueOn.trim() === '') read.say('dueOn', 'Give the day it is due.');
      return {
        ...typed,
        amount: amount ?? 0,
        dueOn: dueOn ?? typing.today,
        costMinor: read.money('cost', cost),
      };
    });

export const closeArrivingSchema = z.object({ arrivingId: id, how: z.enum(['came', 'never']), why: words(500) });
