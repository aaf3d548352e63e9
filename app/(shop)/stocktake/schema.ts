import { z } from 'zod';
import type { Countable } from '@/app/_server/stocktake/countable';
import type { NoteCounted } from '@/app/_server/stocktake/note-counted';
import { words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { leftByWeight, sayWeighedError } from '@/app/(shop)/containers/left-by-weight';
import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { milligrams } from '@/shared/units/stock-unit';

const stocktake = z.int('Begin a stocktake first.');

export const beginSchema = z.object({
  placeLabel: z.string().transform((text, context) => {
    const label = parseOwnLabel(text);
    if (label.ok && label.value.kind === 'place') return label.value.code;
    context.addIssue('Choose the place to walk, or scan its label.');
    return z.NEVER;
  }),
});

export const seenSchema = z.object({
  stocktake,
  text: z
    .string()
    .max(8192)
    .refine((text) => text.trim() !== '', 'Type the code first.'),
  symbology: z.string().max(8).optional(),
});

export const takeOffSchema = z.object({ stocktake, stockId: z.int().optional(), lineId: z.int().optional() });

export const giveUpSchema = z.object({ stocktake });

export const postSchema = z.object({
  stocktake,
  why: words(500),
  asOf: z.int(),
  choices: z
    .array(
      z.object({
        stockId: z.int(),
        choice: z.enum(['gone', 'move', 'correct', 'leave'], 'Choose what to do about each line.'),
        delta: z.int(),
      }),
    )
    .max(20_000),
});

const typedCount = z.object({
  stocktake,
  stockId: z.int(),
  /** With the container on the scale, what is in it, or that nothing was counted after all. */
  way: z.enum(['gross', 'amount', 'none']),
  gross: words(60),
  amount: words(60),
});

/** What was weighed or counted, as typed, read where it is written. */
export function countSchema(typing: Typing, thing: Countable): z.ZodType<NoteCounted> {
  return typedCount.transform((typed, context): NoteCounted => {
    const read = readFields(typing, context);
    const which = { stocktake: typed.stocktake, stockId: typed.stockId };
    if (typed.way === 'none') return { ...which, counted: null, grossMg: null };
    if (typed.way === 'amount') {
      const counted = read.quantity('amount', typed.amount, thing.unit);
      if (typed.amount.trim() === '') read.say('amount', 'Type what is in it, with its unit; 0 when it is empty.');
      return counted === undefined ? z.NEVER : { ...which, counted, grossMg: null };
    }
    const gross = read.quantity('gross', typed.gross, 'mg');
    if (typed.gross.trim() === '') read.say('gross', 'Type the weight with the container.');
    if (gross === undefined) return z.NEVER;
    if (thing.tareMg === null) {
      read.say('gross', 'The book does not know what the empty container weighs. Give what is left in it.');
      return z.NEVER;
    }
    const { unit, densityGramsPerLitre } = thing;
    const left = leftByWeight({ gross: milligrams(gross), tare: milligrams(thing.tareMg) }, unit, densityGramsPerLitre);
    if (!left.ok) {
      read.say('gross', sayWeighedError(left.error));
      return z.NEVER;
    }
    return { ...which, counted: left.value.left, grossMg: gross };
  });
}
