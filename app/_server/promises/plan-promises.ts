import type { Pen } from '@/app/_server/ledger/write-entry';
import type { NeedFacts } from '@/app/_server/needs/standing-needs';
import { needsOfItems, refuseContainerForNeed, refusePieceForNeed } from '@/app/_server/promises/refuse-for-need';
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

/**
 * Works out what is to be promised, on the book as the pen sees it; refused where any of it cannot be. What is for a need is
 * judged for the day that counts for it, and must be of the job and fit it.
 */
export async function planPromises(
  pen: Pen,
  job: ForJob,
  items: readonly PromiseItem[],
): Promise<Result<PlannedPromise[], Refusal>> {
  const today = dateIn(pen.book.timeZone, pen.now);
  const planned: PlannedPromise[] = [];
  const soFar = (stockId: number) =>
    planned.reduce((sum, each) => (each.stockId === stockId ? sum + each.amount : sum), 0);

  const needs = await needsOfItems(pen, job.id, items);
  if (!needs.ok) return needs;
  for (const item of items) {
    if (item.amount !== undefined && (!Number.isSafeInteger(item.amount) || item.amount <= 0))
      return err({ code: 'not-an-exact-amount', field: 'amount' });
    const { needId } = item;
    const need = needs.value.get(needId ?? 0);
    const forNeed = { ...job, day: need?.goodTo ?? job.day };
    if ('lotId' in item) {
      const found = await ofLot(pen, forNeed, { ...item, need }, today, soFar);
      if (!found.ok) return found;
      planned.push(...found.value.map((each) => ({ ...each, needId })));
      continue;
    }
    const { label } = item;
    const line = await loadContainer(pen.tx, label);
    if (!line) {
      const piece = await aPiece(pen, job, label, today, need);
      if (!piece.ok) return piece;
      planned.push({ ...piece.value, needId });
      continue;
    }
    const unfit = (need && (await refuseContainerForNeed(pen, need, line))) ?? refuseUnfit(line, forNeed, today);
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
    facts: { label: line.label, because: 'scope' in stop && stop.scope === 'lot' ? `lot-${stop.code}` : stop.code },
  };
}

async function ofLot(
  pen: Pen,
  job: ForJob,
  { lotId, amount, need }: { lotId: number; amount: number; need: NeedFacts | undefined },
  today: CalendarDate,
  soFar: (stockId: number) => number,
): Promise<Result<Omit<PlannedPromise, 'needId'>[], Refusal>> {
  const lines = await readContainers(pen.tx, Prisma.sql`c."lotId" = ${lotId} AND s."quantity" > 0`, { most: 500 });
  const [first] = lines;
  if (!first) return err({ code: 'not-found', field: 'lotId' });
  const other = need && (await refuseContainerForNeed(pen, need, first));
  if (other) return err(other);
  const { hold } = first.candidate.lot;
  if (hold !== 'free')
    return err({ code: 'stop-not-overridable', facts: { label: first.label, because: `lot-${hold}` } });
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
  need: NeedFacts | undefined,
): Promise<Result<Omit<PlannedPromise, 'needId'>, Refusal>> {
  const piece = await loadPiece(pen.tx, label);
  if (!piece) return err({ code: 'not-found', facts: { label } });
  const other = need && refusePieceForNeed(need, piece);
  if (other) return err(other);
  const { stockId } = piece;
  const stop = judgePiece(piece.facts, today, job.id).reasons.find((reason) => reason.weight === 'stop');
  if (stop?.code === 'gone') return err({ code: 'already-empty', facts: { label } });
  const elsewhere = await refusePromised(pen.tx, { stockId, jobId: job.id, taken: 1, left: 1 });
  if (elsewhere) return err(elsewhere);
  if (stop) return err({ code: 'stop-not-overridable', facts: { label, because: stop.code } });
  if (piece.facts.promisedTo) return err({ code: 'changes-nothing' });
  return ok({ stockId, label, amount: 1, unit: 'piece', kind: 'piece' });
}
