import type { Pen } from '@/app/_server/ledger/write-entry';
import { nameOf } from '@/app/_server/needs/need-name';
import { type NeedFacts, standingNeeds } from '@/app/_server/needs/standing-needs';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import { inUnit } from '@/shared/promise/in-unit';
import { willDo } from '@/shared/promise/plan-wood-needs';
import { err, ok, type Result } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';

/** The needs that something is promised for, by number; refused where one no longer stands or is another job's. */
export async function needsOfItems(
  pen: Pen,
  jobId: number,
  items: readonly { needId?: number }[],
): Promise<Result<ReadonlyMap<number, NeedFacts>, Refusal>> {
  const ids = [...new Set(items.flatMap(({ needId }) => needId ?? []))];
  if (ids.length === 0) return ok(new Map());
  const needs = await standingNeeds(pen.tx, { id: { in: ids } });
  if (needs.length < ids.length) return err({ code: 'need-gone' });
  const other = needs.find((need) => need.jobId !== jobId);
  if (other) return err({ code: 'need-of-another-job', facts: { need: nameOf(other), job: other.job } });
  return ok(new Map(needs.map((need) => [need.id, need])));
}

/** Why a container cannot be promised for a need: another product or part, or nothing tells its volume from its mass. */
export async function refuseContainerForNeed(
  pen: Pen,
  need: NeedFacts,
  line: ContainerLine,
): Promise<Refusal | undefined> {
  const { system } = line.candidate.policy;
  const fits = need.product
    ? need.product.id === line.productId
    : need.system !== null && system?.id === String(need.system.id) && system.part === need.system.part;
  if (!fits) return notForIt(need, line.label, line.product);
  const product = await pen.tx.product.findUniqueOrThrow({
    where: { id: line.productId },
    select: { densityGramsPerLitre: true },
  });
  const density = product.densityGramsPerLitre === null ? undefined : gramsPerLitre(product.densityGramsPerLitre);
  const counts = inUnit(1, line.unit, need.unit, density?.ok ? density.value : undefined, 'up');
  return counts === undefined ? { code: 'no-density', facts: { product: line.product } } : undefined;
}

/** Why a piece cannot be promised for a need: a material is wanted, or other wood, or a larger piece. */
export function refusePieceForNeed({ wood, ...need }: NeedFacts, piece: PieceLine): Refusal | undefined {
  const { species, form, lengthNm, thicknessNm } = piece;
  const widthNm = Math.min(piece.widthStartNm, piece.widthMiddleNm, piece.widthEndNm);
  const wanted = wood && {
    ...wood,
    lengthNm: wood.lengthNm ?? undefined,
    widthNm: wood.widthNm ?? undefined,
    thicknessNm: wood.thicknessNm ?? undefined,
  };
  return wanted && willDo({ species, form, lengthNm, widthNm, thicknessNm }, wanted)
    ? undefined
    : notForIt({ wood, ...need }, piece.label, `${species} ${form}`);
}

const notForIt = (need: NeedFacts, label: string, is: string): Refusal => ({
  code: 'not-for-that-need',
  facts: { label, is, need: nameOf(need) },
});
