import type { Pen } from '@/app/_server/ledger/write-entry';
import { refusePromised } from '@/app/_server/promises/refuse-promised';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { loadContainer } from '@/app/_server/stock/load-container';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { readContainers } from '@/app/_server/stock/read-containers';
import { Prisma } from '@/prisma/generated/client';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok, type Result } from '@/shared/result/result';
import { assess } from '@/shared/shelf-life/assess';
import { suggestContainers } from '@/shared/shelf-life/suggest-containers';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { StockUnit } from '@/shared/units/stock-unit';
import { judgePiece } from '@/shared/wood/judge-piece';

/** A container by amount (all that is free without one), a piece whole, or so much of a lot, first to expire first. */
export type PromiseItem =
  | { label: string; amount?: number; needId?: number }
  | { lotId: number; amount: number; needId?: number };

export type PlannedPromise = {
  stockId: number;
  label: string;
  needId?: number;
  amount: number;
  unit: StockUnit;
  kind: 'container' | 'piece';
};

type ForJob = { id: number; name: string; purpose: Purpose; day: CalendarDate };

/** Works out what is to be promised, on the book as the pen sees it; refused where any of it cannot be. */
export async function planPromises(
  pen: Pen,
  job: ForJob,
  items: readonly PromiseItem[],
): Promise<Result<PlannedPromise[], Refusal>> {
  const today = dateIn(pen.book.timeZone, pen.now);
  const planned: PlannedPromise[] = [];
  const soFar = (stockId: number) =>
    planned.reduce((sum, each) => (each.stockId === stockId ? sum + each.amount : sum), 0);

  const days = await daysOfNeeds(
    pen,
    items.flatMap((each) => each.needId ?? []),
  );
  for (const item of items) {
    if (item.amount !== undefined && (!Number.isSafeInteger(item.amount) || item.amount <= 0))
      return err({ code: 'not-an-exact-amount', field: 'amount' });
    const { needId } = item;
    if ('lotId' in item) {
      const found = await ofLot(pen, job, item, today, soFar);
      if (!found.ok) return found;
      planned.push(...found.value.map((each) => ({ ...each, needId })));
      continue;
    }
    const { label } = item;
    const line = await loadContainer(pen.tx, label);
    if (!line) {
      const piece = await aPiece(pen, job, label, today);
      if (!piece.ok) return piece;
      planned.push({ ...piece.value, needId });
      continue;
    }
    const unfit = refuseUnfit(line, { ...job, day: days.get(needId ?? 0) ?? job.day }, today);
    if (unfit) return err(unfit);
    if (line.left === 0) return err({ code: 'already-empty', facts: { label } });
    const inHand = (await freeFor(pen, line)) - soFar(line.stockId);
    const amount = item.amount ?? inHand;
    if (amount + soFar(line.stockId) > line.left)
      return err({
        code: 'not-enough-left',
        field: 'amount',
        facts: { label, left: line.left, asked: amount, unit: line.unit },
      });
    if (amount > inHand || amount === 0) {
      const own = await ownOf(pen, job.id, line.stockId);
      const taken = (item.amount ?? 1) + soFar(line.stockId) + own;
      const refusal = await refusePromised(pen.tx, { stockId: line.stockId, jobId: job.id, taken, left: line.left });
      const all = { code: 'not-enough-left' as const, facts: { label, left: inHand, asked: amount, unit: line.unit } };
      return err({ ...(refusal ?? all), field: 'amount' });
    }
    planned.push({ stockId: line.stockId, label, needId, amount, unit: line.unit, kind: 'container' });
  }
  return ok(planned);
}

/** The days on which needs are needed, where a step says so: what is for the first lift need not keep to the last. */
async function daysOfNeeds(pen: Pen, ids: readonly number[]): Promise<ReadonlyMap<number, CalendarDate>> {
  const rows = await pen.tx.need.findMany({
    where: { id: { in: [...ids] }, step: { entry: { reversedBy: null }, removedById: null } },
    select: { id: true, step: { select: { day: true } } },
  });
  return new Map(rows.flatMap(({ id, step }) => (step ? [[id, step.day as CalendarDate] as const] : [])));
}

/** What of a container is promised to nobody. */
async function freeFor(pen: Pen, line: ContainerLine): Promise<number> {
  const promised = await pen.tx.promised.aggregate({ where: { stockId: line.stockId }, _sum: { amount: true } });
  return line.left - Number(promised._sum.amount ?? 0n);
}

async function ownOf(pen: Pen, jobId: number, stockId: number): Promise<number> {
  const own = await pen.tx.promised.findUnique({
    where: { jobId_stockId: { jobId, stockId } },
    select: { amount: true },
  });
  return Number(own?.amount ?? 0n);
}

/** Nothing is promised that would be a Stop on the day. */
function refuseUnfit(line: ContainerLine, job: ForJob, today: CalendarDate): Refusal | undefined {
  const verdict = assess({ ...line.candidate, purpose: job.purpose, dayOfUse: job.day, today });
  const stop = verdict.reasons.find((each) => each.weight === 'stop' && each.code !== 'empty');
  if (!stop) return undefined;
  const { override } = verdict;
  if (override !== 'not-needed' && override.allowed)
    return {
      code: 'not-good-on-the-day',
      facts: { label: line.label, until: verdict.governing?.lastGoodDay ?? null, day: verdict.judgedFor },
    };
  return {
    code: 'stop-not-overridable',
    facts: { label: line.label, because: stop.code === 'on-hold' ? 'held' : stop.code },
  };
}

async function ofLot(
  pen: Pen,
  job: ForJob,
  { lotId, amount }: { lotId: number; amount: number },
  today: CalendarDate,
  soFar: (stockId: number) => number,
): Promise<Result<Omit<PlannedPromise, 'needId'>[], Refusal>> {
  const lines = await readContainers(pen.tx, Prisma.sql`c."lotId" = ${lotId} AND s."quantity" > 0`, { most: 500 });
  const [first] = lines;
  if (!first) return err({ code: 'not-found', field: 'lotId' });
  const free = new Map<number, number>();
  for (const line of lines) free.set(line.stockId, (await freeFor(pen, line)) - soFar(line.stockId));
  const candidates = lines
    .filter((line) => (free.get(line.stockId) ?? 0) > 0)
    .map((line) => ({
      ...line.candidate,
      container: { ...line.candidate.container, left: free.get(line.stockId) ?? 0 },
    }));
  const { containers, reaches } = suggestContainers({
    candidates,
    asked: amount,
    dayOfUse: job.day,
    today,
    purpose: job.purpose,
    colourShows: false,
  });
  if (!reaches) {
    const found = containers.reduce((sum, each) => sum + each.take, 0);
    const facts = { lot: first.lotCode ?? '', free: found, asked: amount, unit: first.unit };
    return err({ code: 'lot-has-too-little', field: 'amount', facts });
  }
  return ok(
    containers.map(({ containerId, label, take }) => ({
      stockId: Number(containerId),
      label,
      amount: take,
      unit: first.unit,
      kind: 'container' as const,
    })),
  );
}

async function aPiece(
  pen: Pen,
  job: ForJob,
  label: string,
  today: CalendarDate,
): Promise<Result<Omit<PlannedPromise, 'needId'>, Refusal>> {
  const piece = await loadPiece(pen.tx, label);
  if (!piece) return err({ code: 'not-found', facts: { label } });
  const { stockId } = piece;
  const stop = judgePiece(piece.facts, today, job.id).reasons.find((reason) => reason.weight === 'stop');
  if (stop?.code === 'gone') return err({ code: 'already-empty', facts: { label } });
  const elsewhere = await refusePromised(pen.tx, { stockId, jobId: job.id, taken: 1, left: 1 });
  if (elsewhere) return err(elsewhere);
  if (stop) return err({ code: 'stop-not-overridable', facts: { label, because: stop.code } });
  if (piece.facts.promisedTo) return err({ code: 'changes-nothing' });
  return ok({ stockId, label, amount: 1, unit: 'piece', kind: 'piece' });
}
