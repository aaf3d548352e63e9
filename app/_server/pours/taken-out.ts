import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { WriteTransaction } from '@/prisma/open-book';
import { err, ok, type Result } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';
import { massToVolume } from '@/shared/units/mass-to-volume';
import { sayWeighing } from '@/shared/units/say-weighing';
import { milligrams } from '@/shared/units/stock-unit';
import { usedByWeight } from '@/shared/units/used-by-weight';

/** What left a container: milligrams in the bucket, and the same in the container's own small unit. */
export type TakenOut = { mass: number; taken: number; how?: string };

type Typed = { mass: number; weighed?: { beforeMg?: number; afterMg: number } };

/**
 * How much came out, as typed or by the weights, on the book as it stands. Refused where the container did not hold as
 * much: unlike a pull, nothing is cut down to what the book says, because what is in the bucket is in the bucket.
 */
export async function takenOut(
  tx: Pick<WriteTransaction, 'product'>,
  line: ContainerLine,
  { mass, weighed }: Typed,
): Promise<Result<TakenOut, Refusal>> {
  const { densityGramsPerLitre } = await tx.product.findUniqueOrThrow({
    where: { id: line.productId },
    select: { densityGramsPerLitre: true },
  });
  const { unit, left, tareMg, label } = line;
  if (!Number.isSafeInteger(mass) || mass <= 0) return err({ code: 'not-an-exact-amount', field: 'mass' });
  if (unit === 'piece') return err({ code: 'not-a-resin-part', field: 'label', facts: { label } });
  const density = unit === 'uL' ? gramsPerLitre(densityGramsPerLitre ?? 0) : undefined;
  if (density && !density.ok) {
    return err({ code: 'weighing-does-not-fit', field: 'mass', facts: { because: 'no-density' } });
  }
  const inUnit = (mg: number) => (density?.ok ? Number(massToVolume(milligrams(mg), density.value).amount) : mg);
  const weighing = weighed && { unit, left, tareMg, densityGramsPerLitre, ...weighed };
  const used = weighing ? usedByWeight(weighing) : ok(inUnit(mass));
  if (!used.ok) return err({ code: 'weighing-does-not-fit', field: 'mass', facts: { because: used.error.code } });
  if (used.value > left) {
    return err({ code: 'more-than-it-held', field: 'mass', facts: { label, left, asked: used.value, unit } });
  }
  if (used.value !== inUnit(mass)) {
    return err({
      code: 'weighing-differs',
      field: 'mass',
      facts: { label, used: used.value, asked: inUnit(mass), unit },
    });
  }
  return ok({ mass, taken: used.value, ...(weighing && { how: sayWeighing(weighing) }) });
}
