import type { Command } from '@/app/_server/act';
import { refuseClosedJob } from '@/app/_server/jobs/refuse-closed-job';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { nameOf } from '@/app/_server/needs/need-name';
import { type StandingNeed, standNeeds } from '@/app/_server/needs/stand-needs';
import { standingNeeds } from '@/app/_server/needs/standing-needs';
import { keepPromises } from '@/app/_server/promises/keep-promises';
import type { PlannedPromise } from '@/app/_server/promises/plan-promises';
import { refusePromised } from '@/app/_server/promises/refuse-promised';
import type { Reserved } from '@/app/_server/promises/reserve';
import { sayAmounts } from '@/app/_server/promises/say-amounts';
import type { Refusal } from '@/app/_server/refusal';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';

/** `stillShort`: what could not be promised, because it is not there: on order or to be bought. */
export type ReservedNeeds = Reserved & { stillShort: { need: string; amount: number; unit: string }[] };

/**
 * Promises to a job everything it needs that is free and good on its day, first to expire first: what can be had is had,
 * and what cannot is named. Worked out anew on the book as it stands, so that nothing is promised twice.
 */
export const reserveNeeds: Command<{ jobId: number; needIds?: readonly number[] }, ReservedNeeds> = (book, by, input) =>
  writeEntry<ReservedNeeds>(book, { ...by, kind: 'reserved', request: input }, async (pen) => {
    const { jobId } = input;
    const job = await pen.tx.job.findUnique({ where: { id: jobId }, select: { name: true, state: true } });
    if (!job) return err({ code: 'not-found', field: 'jobId' });
    const closed = refuseClosedJob(job);
    if (closed) return err(closed);
    const today = dateIn(pen.book.timeZone, pen.now);
    const { needs, stock } = await standNeeds(pen.tx, await standingNeeds(pen.tx, { jobId }), {
      today,
      currency: pen.book.currency,
    });
    const { needIds } = input;
    const chosen = needs.filter(({ need }) => needIds === undefined || needIds.includes(need.id));
    if (needIds !== undefined && chosen.length < needIds.length) return err({ code: 'need-gone' });
    const planned = chosen.flatMap(({ need, standing }) =>
      standing.have.map(
        (part): PlannedPromise => ({
          stockId: part.stockId,
          label: part.label,
          needId: need.id,
          amount: part.stockAmount,
          unit: stock.find((each) => each.stockId === part.stockId)?.unit ?? 'piece',
          kind: need.kind === 'wood' ? 'piece' : 'container',
        }),
      ),
    );
    if (planned.length === 0) return err((await heldElsewhere(pen, jobId, chosen)) ?? { code: 'nothing-to-reserve' });
    const promised = planned.map(({ stockId: _, ...each }) => each);
    const answer: ReservedNeeds = {
      entryId: pen.entryId,
      jobId,
      job: job.name,
      promised,
      stillShort: chosen.flatMap(({ need, standing }) => {
        const amount = standing.short + standing.arriving.reduce((sum, each) => sum + each.amount, 0);
        return amount > 0 ? [{ need: nameOf(need), amount, unit: need.unit }] : [];
      }),
    };
    await pen.enter({ jobId, reference: sayAmounts(promised, pen.book.units) }, answer);
    const refused = await keepPromises(pen, jobId, planned);
    return refused ? err(refused) : ok(answer);
  });

/** Who holds what the job still needs, where another was first. */
async function heldElsewhere(pen: Pen, jobId: number, needs: readonly StandingNeed[]): Promise<Refusal | undefined> {
  const stockId = needs.find(({ standing }) => standing.short > 0 && standing.elsewhere.length > 0)?.standing
    .elsewhere[0]?.stockId;
  if (stockId === undefined) return undefined;
  const { quantity } = await pen.tx.stock.findUniqueOrThrow({ where: { id: stockId }, select: { quantity: true } });
  return refusePromised(pen.tx, { stockId, jobId, taken: Number(quantity), left: Number(quantity) });
}
