import type { Refusal } from '@/app/_server/refusal';
import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';

/**
 * Why a part may not go: a pour is planned for it, or steps of the time line or needs belong to it. Undefined where nothing
 * does.
 */
export async function refusePartInUse(
  tx: Pick<WriteTransaction, 'pour' | 'step' | 'need'>,
  { id: partId, name }: { id: number; name: string },
): Promise<Refusal | undefined> {
  const pour = await tx.pour.findFirst({ where: { partId, ...STANDS }, select: { name: true } });
  if (pour) return { code: 'part-has-a-pour', facts: { part: name, pour: pour.name } };
  const steps = await tx.step.findMany({
    where: { partId, ...STANDS },
    orderBy: [{ day: 'asc' }, { sort: 'asc' }, { id: 'asc' }],
    select: { name: true },
  });
  const [first] = steps;
  if (first) return { code: 'part-has-steps', facts: { part: name, step: first.name, count: steps.length } };
  const needs = await tx.need.count({ where: { partId, ...STANDS } });
  return needs > 0 ? { code: 'part-has-needs', facts: { part: name, count: needs } } : undefined;
}
