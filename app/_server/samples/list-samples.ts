import type { LookResult } from '@/app/_server/samples/look-at-sample';
import type { Prisma } from '@/prisma/generated/client';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

type LotWords = { lotId: number; words: string };

export type SampleLine = {
  id: number;
  name: string;
  madeOn: CalendarDate;
  lookOn: CalendarDate | null;
  note: string;
  place: string | null;
  job: { id: number; name: string } | null;
  pour: string | null;
  liftId: number | null;
  lots: LotWords[];
  gone: boolean;
  looks: { id: number; lookedOn: CalendarDate; result: LookResult; note: string; photo: string | null }[];
};

const MOST = 300;

/** The shelf of samples: those to be looked at first, by their day; with `all` also those that are gone; or one by its number. */
export async function listSamples(book: OpenBook, which: { all: boolean } | { id: number }): Promise<SampleLine[]> {
  const lot = { select: { stockId: true, code: true, product: { select: { name: true } } } } as const;
  const rows = await book.read.sample.findMany({
    where: {
      entry: { reversedBy: null },
      ...('id' in which
        ? { id: which.id }
        : which.all
          ? {}
          : { OR: [{ goneById: null }, { goneBy: { reversedBy: { isNot: null } } }] }),
    },
    orderBy: { id: 'desc' },
    take: MOST,
    select: {
      id: true,
      name: true,
      madeOn: true,
      lookOn: true,
      note: true,
      place: { select: { name: true } },
      lotA: lot,
      lotB: lot,
      goneBy: { select: { reversedBy: { select: { id: true } } } },
      lift: {
        select: { id: true, nr: true, pour: { select: { name: true, job: { select: { id: true, name: true } } } } },
      },
      looks: {
        where: { entry: { reversedBy: null } },
        orderBy: { id: 'desc' },
        select: { id: true, lookedOn: true, result: true, note: true, photo: { select: { file: true } } },
      },
    },
  });
  const lines = rows.map(({ lotA, lotB, lift, place, goneBy, looks, ...row }): SampleLine => {
    const lots = [lotA, lotB].flatMap((each) =>
      each
        ? [{ lotId: each.stockId, words: `${each.product.name}, ${each.code ? `lot ${each.code}` : 'no lot code'}` }]
        : [],
    );
    return {
      ...row,
      madeOn: row.madeOn as CalendarDate,
      lookOn: row.lookOn as CalendarDate | null,
      place: place?.name ?? null,
      job: lift?.pour.job ?? null,
      pour: lift ? `${lift.pour.name}, ${lift.nr === 0 ? 'seal coat' : `lift ${lift.nr}`}` : null,
      liftId: lift?.id ?? null,
      lots,
      gone: goneBy !== null && goneBy.reversedBy === null,
      looks: looks.map(({ photo, ...look }) => ({
        ...look,
        lookedOn: look.lookedOn as CalendarDate,
        result: look.result as LookResult,
        photo: photo?.file ?? null,
      })),
    };
  });
  const due = ({ gone, lookOn }: SampleLine) => (gone ? '9999-b' : (lookOn ?? '9999-a'));
  return lines.sort((a, b) => (due(a) < due(b) ? -1 : due(a) > due(b) ? 1 : b.id - a.id));
}

const MOST_LIFTS = 60;

export type SampleChoices = {
  lifts: { liftId: number; words: string }[];
  /** Lifts that were poured before these, and are not among them. */
  olderLifts: number;
  lots: Record<'A' | 'B', LotWords[]>;
};

/** What a sample can be of: the lifts that were poured of late, and one that is asked for; the lots of resin parts. */
export async function sampleChoices(book: OpenBook, liftId?: number): Promise<SampleChoices> {
  const begun: Prisma.LiftWhereInput = {
    OR: [{ pouredBy: { reversedBy: null } }, { weighed: { some: { entry: { reversedBy: null } } } }],
  };
  const select = { id: true, nr: true, pour: { select: { name: true, job: { select: { name: true } } } } } as const;
  const [newest, asked, all, lots] = await Promise.all([
    book.read.lift.findMany({
      where: begun,
      orderBy: { id: 'desc' },
      take: MOST_LIFTS,
      select,
    }),
    liftId === undefined ? null : book.read.lift.findFirst({ where: { id: liftId, ...begun }, select }),
    book.read.lift.count({ where: begun }),
    book.read.lot.findMany({
      where: { product: { part: { in: ['A', 'B'] } } },
      orderBy: { stockId: 'desc' },
      take: 120,
      select: { stockId: true, code: true, product: { select: { name: true, part: true } } },
    }),
  ]);
  const lifts = asked && !newest.some(({ id }) => id === asked.id) ? [asked, ...newest] : newest;
  const of = (part: 'A' | 'B') =>
    lots
      .filter(({ product }) => product.part === part)
      .map(({ stockId, code, product }) => ({
        lotId: stockId,
        words: `${product.name}, ${code ? `lot ${code}` : 'no lot code'}`,
      }));
  return {
    lifts: lifts.map(({ id, nr, pour }) => ({
      liftId: id,
      words: `${pour.job.name}: ${pour.name}, ${nr === 0 ? 'seal coat' : `lift ${nr}`}`,
    })),
    olderLifts: all - lifts.length,
    lots: { A: of('A'), B: of('B') },
  };
}
