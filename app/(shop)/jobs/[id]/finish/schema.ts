import { z } from 'zod';
import type { PlanCoats } from '@/app/_server/finish/plan-coats';
import { wholeDay } from '@/app/(shop)/_parts/whole-day';
import { readArea } from '@/shared/finish/area-text';
import { readCoverage } from '@/shared/finish/coverage-text';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A plan of coats as it is typed: the area and the coverage in the book's units, each empty where it is not typed. */
export function coatsSchema({ prefer }: { prefer: UnitSystem }): z.ZodType<PlanCoats> {
  const fields = z.object({
    jobId: z.number().int().positive(),
    productId: z.coerce.number('Choose a finish.').int().positive('Choose a finish.'),
    partIds: z.array(z.number().int().positive()).max(200),
    faces: z.union([z.literal(1), z.literal(2)]),
    area: z.string().max(40),
    coats: z.coerce.number('Give a whole number.').int('Give a whole number.').min(1, 'At least one.').max(30),
    coverage: z.string().max(40),
    loss: z.coerce.number('Give a whole number.').int('Give a whole number.').min(0).max(90),
    firstDay: wholeDay,
  });
  return fields.transform(({ area, coverage, loss, ...rest }, context) => {
    const areaMm2 = readArea(area, { prefer });
    const coverageTenths = readCoverage(coverage, { prefer });
    if (!areaMm2.ok && areaMm2.error.code !== 'empty')
      context.addIssue({ code: 'custom', path: ['area'], message: 'Give the area with its unit, for example 2.5 m².' });
    if (!coverageTenths.ok && coverageTenths.error.code !== 'empty')
      context.addIssue({ code: 'custom', path: ['coverage'], message: 'Give how far it goes, as its sheet says.' });
    return {
      ...rest,
      areaMm2: areaMm2.ok ? areaMm2.value : null,
      coverageTenths: coverageTenths.ok ? coverageTenths.value : null,
      lossPercent: loss,
    };
  });
}
