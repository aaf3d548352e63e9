import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { ShelfLimit } from '@/app/_ui/rule/shelf';
import { sayLeftOf } from '@/app/(shop)/_parts/stock/say-left-of';
import { sayStanding } from '@/app/(shop)/_parts/stock/say-standing';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { judge } from '@/shared/shelf-life/judge';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A container as a list shows it, judged for a client's job today. */
export type ContainerRow = {
  stockId: number;
  label: string;
  productId: number;
  product: string;
  maker: string;
  lot: string | null;
  left: string;
  size: string;
  usedUp: boolean;
  opened: boolean;
  place: string | null;
  word: VerdictWord;
  limit: string;
  because: string | null;
  limits: ShelfLimit[];
};

export function containerRow(
  line: ContainerLine,
  { today, order, prefer }: { today: CalendarDate; order: DateOrder; prefer: UnitSystem },
): ContainerRow {
  const verdict = judge({ ...line.candidate, purpose: 'client', dayOfUse: today, today });
  const standing = sayStanding(verdict, { today, order, prefer });
  return {
    stockId: line.stockId,
    label: line.label,
    productId: line.productId,
    product: line.product,
    maker: line.maker,
    lot: line.lotCode,
    ...sayLeftOf(line, prefer),
    usedUp: Number(line.left) === 0,
    opened: line.candidate.container.opened !== undefined,
    place: line.place,
    word: verdict.word,
    limit: standing.limit,
    because: standing.because ?? null,
    limits: verdict.limits
      .filter((limit) => limit.effective)
      .map((limit) => ({ lastGoodDay: limit.lastGoodDay, label: limit.basis, governing: limit === verdict.governing })),
  };
}
