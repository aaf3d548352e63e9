import { partOfJob } from '@/app/_server/jobs/part-of-job';
import type { Pen } from '@/app/_server/ledger/write-entry';
import type { Refusal } from '@/app/_server/refusal';
import { inUnit } from '@/shared/promise/in-unit';
import { err, ok, type Result } from '@/shared/result/result';
import { gramsPerLitre } from '@/shared/units/density';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';

/** A need as a form gives it: pieces of wood, so much of a product, or so much of a part of a resin system. */
export type NeedFields = {
  stepId?: number;
  /** The part of the job it is for, null for the whole job; left out, that of its step. */
  partId?: number | null;
  note: string;
} & (
  | {
      kind: 'wood';
      species: string;
      form: '' | 'slab' | 'board' | 'pack' | 'sheet' | 'offcut';
      lengthNm?: number;
      widthNm?: number;
      thicknessNm?: number;
      count: number;
    }
  | { kind: 'product'; productId: number; amount: number; unit: StockUnit; surface: string }
  | { kind: 'part'; systemId: number; part: 'A' | 'B'; milligrams: number; surface: string }
);

/** The columns of a need, and what it is in words; refused where the job has no such day, or the book no such material. */
export async function needColumns(pen: Pen, jobId: number, input: NeedFields) {
  const step =
    input.stepId === undefined
      ? undefined
      : await pen.tx.step.findUnique({ where: { id: input.stepId }, select: { jobId: true, partId: true } });
  if (input.stepId !== undefined && step?.jobId !== jobId) return err<Refusal>({ code: 'not-found', field: 'stepId' });
  // What is needed for a step of a part is needed for that part; for one of the whole job, for whichever is said.
  const part = await partOfJob(pen.tx, jobId, step?.partId ?? input.partId ?? null);
  if (!part.ok) return part;
  const ofPart = (step || input.partId !== undefined) && { partId: part.value?.id ?? null };
  const common = { stepId: input.stepId ?? null, note: input.note.trim(), ...ofPart };
  if (input.kind === 'wood') {
    if (!isAmount(input.count)) return err<Refusal>({ code: 'not-an-exact-amount', field: 'count' });
    const size = (nm: number | undefined) => (nm === undefined ? null : BigInt(nm));
    const species = input.species.trim();
    const columns = {
      ...common,
      kind: 'wood',
      species,
      form: input.form,
      lengthNm: size(input.lengthNm),
      widthNm: size(input.widthNm),
      thicknessNm: size(input.thicknessNm),
      productId: null,
      systemId: null,
      resinPart: null,
      unit: 'piece',
      amount: BigInt(input.count),
      surface: '',
    };
    return ok({ columns, words: `${input.count} × ${[species || 'any wood', input.form].filter(Boolean).join(' ')}` });
  }
  const anything = { species: '', form: '', lengthNm: null, widthNm: null, thicknessNm: null };
  const surface = input.surface.trim();
  if (input.kind === 'part') {
    if (!isAmount(input.milligrams)) return err<Refusal>({ code: 'not-an-exact-amount', field: 'amount' });
    const system = await pen.tx.resinSystem.findUnique({ where: { id: input.systemId }, select: { name: true } });
    if (!system) return err<Refusal>({ code: 'system-unknown', field: 'systemId' });
    const columns = {
      ...common,
      ...anything,
      kind: 'material',
      productId: null,
      systemId: input.systemId,
      resinPart: input.part,
      unit: 'mg',
      amount: BigInt(input.milligrams),
      surface,
    };
    const amount = printQuantityExact(amountOf('mg', input.milligrams), 'mg');
    return ok({ columns, words: `${amount} of ${system.name}, part ${input.part}` });
  }
  const product = await pen.tx.product.findUnique({
    where: { id: input.productId },
    select: { name: true, unit: true, densityGramsPerLitre: true },
  });
  if (!product) return err<Refusal>({ code: 'not-found', field: 'productId' });
  const amount = inProductUnit(input, product);
  if (!amount.ok) return amount;
  const columns = {
    ...common,
    ...anything,
    kind: 'material',
    productId: input.productId,
    systemId: null,
    resinPart: null,
    unit: product.unit,
    amount: BigInt(amount.value),
    surface,
  };
  const unit = product.unit as StockUnit;
  return ok({ columns, words: `${printQuantityExact(amountOf(unit, amount.value), unit)} of ${product.name}` });
}

const isAmount = (amount: number) => Number.isSafeInteger(amount) && amount > 0;

function inProductUnit(
  { amount, unit }: { amount: number; unit: StockUnit },
  product: { name: string; unit: string; densityGramsPerLitre: number | null },
): Result<number, Refusal> {
  if (!isAmount(amount)) return err({ code: 'not-an-exact-amount', field: 'amount' });
  const density = product.densityGramsPerLitre === null ? undefined : gramsPerLitre(product.densityGramsPerLitre);
  const converted = inUnit(amount, unit, product.unit as StockUnit, density?.ok ? density.value : undefined, 'up');
  if (converted !== undefined) return ok(converted);
  if (unit === 'piece' || product.unit === 'piece') return err({ code: 'unit-does-not-fit', field: 'amount' });
  return err({ code: 'no-density', field: 'amount', facts: { product: product.name } });
}
