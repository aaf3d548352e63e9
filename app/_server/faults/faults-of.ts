import { FAULT_STANDS, isSettled } from '@/app/_server/faults/standing-faults';
import type { WriteTransaction } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { type FaultKind, faultKind } from '@/shared/faults/fault-kinds';
import type { Point } from '@/shared/outline/point';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';

export type FaultLine = {
  id: number;
  kind: FaultKind;
  foundOn: CalendarDate;
  note: string;
  depth: Nanometres | null;
  place: Point | null;
  photo: string | null;
  who: string;
  job: { id: number; name: string } | null;
  lift: { nr: number; pour: string } | null;
  /** The whole pour, where no lift of it was named. */
  pour: string | null;
  /** The label of the piece or container it was found on. */
  label: string | null;
  /** What was done about it, as the entry that settled it says. */
  settled: { how: string; who: string } | null;
};

const MOST = 200;

/** The faults that stand, of a job or of a thing, or one by its number: open ones first, then the newest. */
export async function faultsOf(
  tx: Pick<WriteTransaction, 'fault'>,
  of: { jobId: number } | { stockId: number } | { id: number },
): Promise<FaultLine[]> {
  const rows = await tx.fault.findMany({
    where: { ...of, ...FAULT_STANDS },
    orderBy: { id: 'desc' },
    take: MOST,
    select: {
      id: true,
      kind: true,
      foundOn: true,
      note: true,
      depthNm: true,
      place: true,
      photo: { select: { file: true } },
      entry: { select: { who: true } },
      job: { select: { id: true, name: true } },
      pour: { select: { name: true } },
      lift: { select: { nr: true, pour: { select: { name: true } } } },
      stock: { select: { label: true } },
      settledBy: { select: { why: true, who: true, reversedBy: { select: { id: true } } } },
    },
  });
  const lines = rows.map((row) => ({
    id: row.id,
    kind: faultKind(row.kind),
    foundOn: row.foundOn as CalendarDate,
    note: row.note,
    depth: row.depthNm === null ? null : nanometres(Number(row.depthNm)),
    place: row.place === null ? null : (JSON.parse(row.place) as Point),
    photo: row.photo?.file ?? null,
    who: row.entry.who,
    job: row.job,
    lift: row.lift ? { nr: row.lift.nr, pour: row.lift.pour.name } : null,
    pour: row.lift ? null : (row.pour?.name ?? null),
    label: row.stock?.label ?? null,
    settled: isSettled(row) && row.settledBy ? { how: howOf(row.settledBy.why), who: row.settledBy.who } : null,
  }));
  return [...lines.filter(({ settled }) => !settled), ...lines.filter(({ settled }) => settled)];
}

/** The entry says the kind of fault first, for the history. */
const howOf = (why: string) => why.slice(why.indexOf(': ') + 2);
