import type { Pen } from '@/app/_server/ledger/write-entry';
import type { PullContainer } from '@/app/_server/pull/pull-container';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { err, ok, type Result } from '@/shared/result/result';
import { sayWeighing } from '@/shared/units/say-weighing';
import { usedByWeight } from '@/shared/units/used-by-weight';

/** What the weights of a pull say, computed on the book as it stands, in words for the book; undefined where the amount was not weighed. */
export async function weighingOf(
  { tx }: Pen,
  line: ContainerLine,
  { weighed, asked }: PullContainer,
): Promise<Result<string | undefined, Refusal>> {
  if (!weighed) return ok(undefined);
  const { densityGramsPerLitre } = await tx.product.findUniqueOrThrow({
    where: { id: line.productId },
    select: { densityGramsPerLitre: true },
  });
  const { unit, left, tareMg } = line;
  const weighing = { unit, left, tareMg, densityGramsPerLitre, ...weighed };
  const used = usedByWeight(weighing);
  if (!used.ok) return err({ code: 'weighing-does-not-fit', field: 'asked', facts: { because: used.error.code } });
  // More than the book says is left is taken as all of it.
  const amount = Math.min(used.value, left);
  if (amount !== asked) {
    return err({ code: 'weighing-differs', field: 'asked', facts: { label: line.label, used: amount, asked, unit } });
  }
  return ok(sayWeighing(weighing));
}
