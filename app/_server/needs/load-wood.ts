import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { WoodOnHand } from '@/shared/promise/plan-wood-needs';
import { type MinorUnits, minorUnits } from '@/shared/units/minor-units';
import { plainName } from '@/shared/wood/plain-name';

const MOST = 5000;

/** Pieces on hand, and those that went into the jobs, as needs of wood look at them; costs in the book's money. */
export async function loadWood(
  tx: Pick<WriteTransaction, 'piece'>,
  jobIds: readonly number[],
  currency: string,
): Promise<WoodOnHand[]> {
  const rows = await tx.piece.findMany({
    where: { stock: { OR: [{ quantity: { gt: 0 } }, { ownerJobId: { in: [...jobIds] } }] } },
    orderBy: { stockId: 'asc' },
    take: MOST,
    select: {
      stockId: true,
      species: true,
      form: true,
      lengthNm: true,
      widthStartNm: true,
      widthMiddleNm: true,
      widthEndNm: true,
      thicknessNm: true,
      costMinor: true,
      currency: true,
      cuts: { select: { entry: { select: { reversedBy: { select: { id: true } } } } } },
      stock: { select: { label: true, quantity: true, hold: true, ownerJobId: true } },
    },
  });
  return rows.flatMap((row): WoodOnHand[] => {
    const taken = row.stock.quantity === 0n;
    // What was cut up is not in the job: its pieces are.
    if (taken && row.cuts.some((cut) => cut.entry.reversedBy === null)) return [];
    return [
      {
        stockId: row.stockId,
        label: row.stock.label ?? '',
        species: row.species,
        form: row.form,
        lengthNm: Number(row.lengthNm),
        widthNm: Math.min(Number(row.widthStartNm), Number(row.widthMiddleNm), Number(row.widthEndNm)),
        thicknessNm: Number(row.thicknessNm),
        held: row.stock.hold !== 'free',
        taken,
        jobId: row.stock.ownerJobId ?? undefined,
        cost: row.costMinor !== null && row.currency === currency ? minorUnits(row.costMinor) : undefined,
      },
    ];
  });
}

/** What was last paid for a piece of the wood that a need asks for; none where nothing was. */
export async function lastPaidForWood(
  tx: Pick<WriteTransaction, 'piece'>,
  { wood }: NeedFacts,
  currency: string,
): Promise<{ paid: MinorUnits; on: CalendarDate } | undefined> {
  const wanted = plainName(wood?.species ?? '');
  // The book keeps the wood's name as it was written; a need may write it otherwise.
  const names = wanted ? await tx.piece.findMany({ distinct: ['species'], select: { species: true } }) : [];
  const row = await tx.piece.findFirst({
    where: {
      ...(wanted
        ? { species: { in: names.map((each) => each.species).filter((name) => plainName(name) === wanted) } }
        : {}),
      ...(wood?.form ? { form: wood.form } : {}),
      costMinor: { not: null },
      currency,
      cutId: null,
    },
    orderBy: [{ receivedOn: 'desc' }, { stockId: 'desc' }],
    select: { costMinor: true, receivedOn: true },
  });
  return row && row.costMinor !== null
    ? { paid: minorUnits(row.costMinor), on: row.receivedOn as CalendarDate }
    : undefined;
}
