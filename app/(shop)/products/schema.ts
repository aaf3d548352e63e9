import { z } from 'zod';
import type { Typing } from '@/app/(shop)/arrive/read-fields';
import { productSchema } from '@/app/(shop)/arrive/teach-schema';

/** A product with what was changed of it: the fields of teaching, read by the same rules. */
export function changeSchema(typing: Typing) {
  return z
    .object({ productId: z.int().positive(), product: productSchema(typing) })
    .transform(({ productId, product: { code: _, ...fields } }) => ({ ...fields, productId }));
}
