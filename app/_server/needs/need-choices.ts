import { readParts } from '@/app/_server/jobs/read-parts';
import { listSpecies } from '@/app/_server/stock/list-species';
import { STANDS } from '@/app/_server/timeline/standing';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { StockUnit } from '@/shared/units/stock-unit';

const MOST = 2000;

/** What a form for a need offers: products, resin systems, the job's days that are still ahead and its parts, woods the book has had. */
export async function needChoices(book: OpenBook, jobId: number) {
  const [products, systems, steps, species, parts] = await Promise.all([
    book.read.product.findMany({
      orderBy: [{ name: 'asc' }, { id: 'asc' }],
      take: MOST,
      select: { id: true, name: true, unit: true },
    }),
    book.read.resinSystem.findMany({
      where: { products: { some: {} } },
      orderBy: { name: 'asc' },
      take: MOST,
      select: { id: true, name: true },
    }),
    book.read.step.findMany({
      where: { jobId, doneOn: null, ...STANDS },
      orderBy: [{ day: 'asc' }, { sort: 'asc' }, { id: 'asc' }],
      select: { id: true, name: true, day: true, part: { select: { name: true } } },
    }),
    listSpecies(book),
    readParts(book.read, jobId),
  ]);
  return {
    products: products.map((each) => ({ ...each, unit: each.unit as StockUnit })),
    systems,
    steps: steps.map((each) => ({ ...each, part: each.part?.name ?? null, day: each.day as CalendarDate })),
    species,
    parts: parts.map(({ id, name }) => ({ id, name })),
  };
}
