import { z } from 'zod';
import { words } from '@/app/(shop)/_parts/acts/schemas';
import type { Typing } from '@/app/(shop)/arrive/read-fields';
import { productSchema } from '@/app/(shop)/arrive/teach-schema';
import { gramsPerLitre } from '@/shared/units/density';

/** A product with what was changed of it: the fields of teaching, read by the same rules, and its density. */
export function changeSchema(typing: Typing) {
  return z
    .object({ productId: z.int().positive(), density: words(10), product: productSchema(typing) })
    .transform(({ productId, density, product: { code: _, ...fields } }, context) => {
      const text = density.trim();
      const read = text === '' ? undefined : gramsPerLitre(Number(text.replace(',', '.')));
      if (read && !read.ok) {
        const message = 'Give whole grams in a litre, from 200 to 20 000. Water is 1000, epoxy about 1100.';
        context.addIssue({ code: 'custom', path: ['density'], message });
        return z.NEVER;
      }
      return { ...fields, productId, densityGramsPerLitre: read?.ok ? Number(read.value) : undefined };
    });
}
