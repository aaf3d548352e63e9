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
    who: string;
    room: TenthsCelsius | null;
    humidityTenths: number | null;
    photo: string | null;
    note: string;
    why: string;
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
      pouredBy: { select: { id: true, who: true, why: true, reversedBy: { select: { id: true } } } },
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
          entry: { select: { happenedAt: true } },
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
    return {
      id: row.id,
      nr: row.nr,
      stepId: row.stepId,
      day: (row.step?.day ?? row.pouredOn ?? '') as CalendarDate,
      depth: nanometres(row.depthNm),
      volume: microlitres(row.volumeUl),
      batches: JSON.parse(row.batches) as WeighedOut[],
      weighed: row.weighed.map((each) => ({
        id: each.id,
        entryId: each.entryId,
        batch: each.batch,
        part: each.part as 'A' | 'B',
        stockId: each.stockId,
        label: each.stock.label ?? '',
        lot: each.stock.container?.lot.code ?? null,
        product: each.stock.container?.product.name ?? '',
        mass: milligrams(each.massMg),
        at: each.entry.happenedAt.toISOString(),
      })),
      ...(pouredBy &&
        !pouredBy.reversedBy && {
          poured: {
            entryId: pouredBy.id,
            on: row.pouredOn as CalendarDate,
            who: pouredBy.who,
            room: row.roomTenthsC === null ? null : tenthsCelsius(row.roomTenthsC),
            humidityTenths: row.humidityTenths,
            photo: row.photo?.file ?? null,
            note: row.note,
            why: pouredBy.why,
          },
        }),
    };
  });
}

/** Whether anything of it was weighed or poured: it then stays as it is, whatever is planned anew. */
export const isBegun = ({ weighed, poured }: LiftLine): boolean => weighed.length > 0 || poured !== undefined;
