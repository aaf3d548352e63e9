import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { readContainers } from '@/app/_server/stock/read-containers';
import { standingNeed } from '@/app/_server/watch/standing-steps';
import { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { assess } from '@/shared/shelf-life/assess';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import { inStockUnit } from '@/shared/units/in-stock-unit';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';

/** A need that what is on hand covers today, and on its day no more: what there is will be past its limit. */
export type UnmetNeed = {
  needId: number;
  jobId: number;
  job: string;
  name: string;
  day: CalendarDate;
  unit: StockUnit;
  needed: number;
  /** On hand and good enough today, and of that what still is on the day. */
  today: number;
  then: number;
};

const MOST = 5000;

/** The needs of open jobs that nothing is promised to yet and that what is on hand would cover only if it were earlier. */
export async function unmetNeeds(book: OpenBook, today: CalendarDate): Promise<UnmetNeed[]> {
  const needs = await book.read.need.findMany({
    where: { ...standingNeed, kind: 'material', promiseLines: { none: { delta: { gt: 0 }, reversedBy: null } } },
    orderBy: { id: 'asc' },
    take: 1000,
    select: {
      id: true,
      jobId: true,
      productId: true,
      systemId: true,
      resinPart: true,
      unit: true,
      amount: true,
      step: { select: { day: true } },
      product: { select: { name: true } },
      system: { select: { name: true } },
      job: { select: { name: true, purpose: true, dayOfUse: true } },
    },
  });
  if (needs.length === 0) return [];
  const products = await book.read.product.findMany({
    where: {
      OR: [
        { id: { in: needs.flatMap(({ productId }) => productId ?? []) } },
        { systemId: { in: needs.flatMap(({ systemId }) => systemId ?? []) } },
      ],
    },
    select: { id: true, systemId: true, part: true, densityGramsPerLitre: true },
  });
  if (products.length === 0) return [];
  const lines = await readContainers(
    book.read,
    Prisma.sql`c."productId" IN (${Prisma.join(products.map(({ id }) => id))}) AND s."quantity" > 0`,
    { most: MOST },
  );
  return needs.flatMap((need): UnmetNeed[] => {
    const fits = products.filter(({ id, systemId, part }) =>
      need.productId === null ? systemId === need.systemId && part === need.resinPart : id === need.productId,
    );
    const density = new Map(fits.map((product) => [product.id, product.densityGramsPerLitre]));
    const own = lines.filter((line) => density.has(line.productId));
    const day = (need.step?.day ?? need.job.dayOfUse) as CalendarDate;
    const unit = need.unit as StockUnit;
    const sum = (on: CalendarDate) => goodOn(own, { on, today, purpose: need.job.purpose as Purpose, unit, density });
    const [now, then] = [sum(today), sum(day)];
    const needed = Number(need.amount);
    if (day <= today || now < needed || then >= needed) return [];
    const name = need.product?.name ?? `${need.system?.name ?? 'Resin'}, part ${need.resinPart}`;
    return [{ needId: need.id, jobId: need.jobId, job: need.job.name, name, day, unit, needed, today: now, then }];
  });
}

function goodOn(
  lines: readonly ContainerLine[],
  on: {
    on: CalendarDate;
    today: CalendarDate;
    purpose: Purpose;
    unit: StockUnit;
    density: ReadonlyMap<number, number | null>;
  },
): number {
  return lines.reduce((sum, line) => {
    const { word } = assess({ ...line.candidate, purpose: on.purpose, dayOfUse: on.on, today: on.today });
    const left = inStockUnit(
      amountOf(line.unit, line.left),
      line.unit,
      on.unit,
      on.density.get(line.productId) ?? null,
    );
    return word === 'stop' || !left.ok ? sum : sum + left.value;
  }, 0);
}
