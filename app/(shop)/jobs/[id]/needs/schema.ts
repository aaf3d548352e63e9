import { z } from 'zod';
import { thingLabel, words } from '@/app/(shop)/_parts/acts/schemas';
import { readFields, type Typing } from '@/app/(shop)/arrive/read-fields';
import { PIECE_FORMS } from '@/shared/wood/piece';

const id = z.int().positive();
/** As many pieces as one need can ask for. */
const MOST_PIECES = 500;

const typed = z.object({
  kind: z.enum(['wood', 'product', 'part']),
  species: words(120),
  form: z.enum(['', ...PIECE_FORMS]),
  length: words(40),
  width: words(40),
  thickness: words(40),
  count: words(10),
  productId: id.optional(),
  unit: z.enum(['mg', 'uL', 'piece']),
  systemId: id.optional(),
  part: z.enum(['A', 'B']),
  amount: words(60),
  surface: words(120),
  stepId: id.optional(),
  partId: id.nullable(),
  note: words(500),
});

type Typed = z.infer<typeof typed>;

/** What a job needs, as it is typed. */
function readNeed(need: Typed, read: ReturnType<typeof readFields>) {
  const common = { stepId: need.stepId, partId: need.partId, note: need.note };
  const amountIn = (unit: Typed['unit']) => {
    const amount = read.quantity('amount', need.amount, unit);
    if (need.amount.trim() === '') read.say('amount', 'Give how much, for example 2.4 kg.');
    else if (amount === 0) read.say('amount', 'It must be more than nothing.');
    return amount ?? 0;
  };
  if (need.kind === 'wood') {
    return {
      ...common,
      kind: 'wood' as const,
      species: need.species,
      form: need.form,
      lengthNm: read.length('length', need.length),
      widthNm: read.length('width', need.width),
      thicknessNm: read.length('thickness', need.thickness, 'thickness'),
      count: read.count('count', need.count, MOST_PIECES) ?? 0,
    };
  }
  if (need.kind === 'part') {
    if (need.systemId === undefined) read.say('systemId', 'Choose the resin system.');
    const { part, surface, systemId = 0 } = need;
    return { ...common, kind: 'part' as const, systemId, part, milligrams: amountIn('mg'), surface };
  }
  if (need.productId === undefined) read.say('productId', 'Choose the product.');
  const { unit, surface, productId = 0 } = need;
  return { ...common, kind: 'product' as const, productId, amount: amountIn(unit), unit, surface };
}

export const addNeedSchema = (typing: Typing) =>
  typed
    .extend({ jobId: id })
    .transform(({ jobId, ...need }, context) => ({ ...readNeed(need, readFields(typing, context)), jobId }));

export const changeNeedSchema = (typing: Typing) =>
  typed
    .extend({ needId: id })
    .transform(({ needId, ...need }, context) => ({ ...readNeed(need, readFields(typing, context)), needId }));

export const removeNeedSchema = z.object({ needId: id });

export const reserveNeedsSchema = z.object({
  jobId: id,
  needIds: z.array(id).min(1).max(100).optional(),
});

export const releaseSchema = z.object({
  jobId: id,
  items: z
    .array(z.object({ label: thingLabel, needId: id.optional() }))
    .min(1)
    .max(100),
});

export const releaseAllSchema = z.object({ jobId: id, why: words(500) });
