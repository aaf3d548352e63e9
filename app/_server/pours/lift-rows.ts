import type { SaidOfBelow } from '@/app/_server/pours/join-below';
import { pouredAt } from '@/app/_server/pours/poured-at';
import { STANDS } from '@/app/_server/timeline/standing';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { WeighedOut } from '@/shared/pour/weigh-out';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type Microlitres, type Milligrams, microlitres, milligrams } from '@/shared/units/stock-unit';
import { type TenthsCelsius, tenthsCelsius } from '@/shared/units/tenths-celsius';

/** One part of a batch as it was weighed out of a container, while that stands. */
type WeighedLine = {
  id: number;
  entryId: number;
  batch: number;
  part: 'A' | 'B';
  stockId: number;
  label: string;
  lot: string | null;
  product: string;
  mass: Milligrams;
  /** When it was weighed. */
  at: string;
  /** What was said of the lift below. */
  below: SaidOfBelow;
};

export type LiftLine = {
  id: number;
  /** 0 is the seal coat. */
  nr: number;
  stepId: number | null;
  /** The day of its step, wherever that was moved to. */
  day: CalendarDate;
  depth: Nanometres;
  volume: Microlitres;
  batches: WeighedOut[];
  weighed: WeighedLine[];
  /** Undefined until it was poured. */
  poured?: {
    entryId: number;
    on: CalendarDate;
    /** When, and whether that is known to the minute. */
    at: string;
    isExact: boolean;
    who: string;
    room: TenthsCelsius | null;
    humidityTenths: number | null;
    photo: string | null;
    note: string;
    why: string;
    below: SaidOfBelow;
  };
};

type Reader = Pick<WriteTransaction, 'lift'>;

/** The lifts of a pour that stand, from the bottom up. A lift stands while its step does. */
export async function readLifts(tx: Reader, pourId: number): Promise<LiftLine[]> {
  const rows = await tx.lift.findMany({
    where: { pourId, step: STANDS },
    orderBy: { nr: 'asc' },
    select: {
      id: true,
      nr: true,
      stepId: true,
      depthNm: true,
      volumeUl: true,
      batches: true,
      pouredOn: true,
      roomTenthsC: true,
      humidityTenths: true,
      note: true,
      photo: { select: { file: true } },
      pouredBy: {
        select: {
          id: true,
          who: true,
          why: true,
          happenedAt: true,
          writtenAt: true,
          answer: true,
          reversedBy: { select: { id: true } },
        },
      },
      step: { select: { day: true } },
      weighed: {
        where: { entry: { reversedBy: null } },
        orderBy: { id: 'asc' },
        select: {
          id: true,
          entryId: true,
          batch: true,
          part: true,
          stockId: true,
          massMg: true,
          entry: { select: { happenedAt: true, answer: true } },
          stock: {
            select: {
              label: true,
              container: { select: { product: { select: { name: true } }, lot: { select: { code: true } } } },
            },
          },
        },
      },
    },
  });
  return rows.map((row): LiftLine => {
    const { pouredBy } = row;
    const weighed = row.weighed.map(weighedLine);
    return {
      id: row.id,
      nr: row.nr,
      stepId: row.stepId,
      day: (row.step?.day ?? row.pouredOn ?? '') as CalendarDate,
      depth: nanometres(row.depthNm),
      volume: microlitres(row.volumeUl),
      batches: JSON.parse(row.batches) as WeighedOut[],
      weighed,
      ...(pouredBy &&
        !pouredBy.reversedBy && {
          poured: {
            entryId: pouredBy.id,
            on: row.pouredOn as CalendarDate,
            ...pouredAt({ ...pouredBy, weighed }),
            who: pouredBy.who,
            room: row.roomTenthsC === null ? null : tenthsCelsius(row.roomTenthsC),
            humidityTenths: row.humidityTenths,
            photo: row.photo?.file ?? null,
            note: row.note,
            why: pouredBy.why,
            below: belowIn(pouredBy.answer),
          },
        }),
    };
  });
}

type WeighedRow = {
  id: number;
  entryId: number;
  batch: number;
  part: string;
  stockId: number;
  massMg: bigint;
  entry: { happenedAt: Date; answer: string };
  stock: { label: string | null; container: { product: { name: string }; lot: { code: string | null } } | null };
};

const weighedLine = ({ entry, stock, ...row }: WeighedRow): WeighedLine => ({
  id: row.id,
  entryId: row.entryId,
  batch: row.batch,
  part: row.part as 'A' | 'B',
  stockId: row.stockId,
  label: stock.label ?? '',
  lot: stock.container?.lot.code ?? null,
  product: stock.container?.product.name ?? '',
  mass: milligrams(row.massMg),
  at: entry.happenedAt.toISOString(),
  below: belowIn(entry.answer),
});

/** What an entry keeps in its answer of the lift below. */
const belowIn = (answer: string): SaidOfBelow => (JSON.parse(answer) as { below?: SaidOfBelow } | null)?.below ?? {};

/** Whether anything of it was weighed or poured: it then stays as it is, whatever is planned anew. */
export const isBegun = ({ weighed, poured }: LiftLine): boolean => weighed.length > 0 || poured !== undefined;
