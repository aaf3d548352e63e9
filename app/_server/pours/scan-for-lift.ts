import type { LiftLine } from '@/app/_server/pours/lift-rows';
import { type BesideItsLots, besideItsLots } from '@/app/_server/pours/other-lot';
import { type PourLine, readPour } from '@/app/_server/pours/read-pour';
import { otherPartsOf, refuseContainer, refuseSlot, type Slot } from '@/app/_server/pours/refuse-for-lift';
import { type PullReply, scanToPull } from '@/app/_server/pull/scan-to-pull';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok, type Result } from '@/shared/result/result';
import type { ScanInput } from '@/shared/scan-codes/scan-reading';
import { isWorseWord } from '@/shared/shelf-life/is-worse-word';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

export type ScanForLift = { pourId: number; nr: number; scan: ScanInput } & Slot;

/** What is scanned for a part of a lift, judged for the day of the last lift of its pour. Writes nothing. */
export async function scanForLift(
  book: OpenBook,
  { pourId, nr, scan, ...slot }: ScanForLift,
  now: Date,
): Promise<Result<Exclude<PullReply, { kind: 'piece' }>, Refusal>> {
  const found = await liftOf(book.read, pourId, nr);
  if (!found.ok) return found;
  const { pour, lift } = found.value;
  const shut = refuseSlot(pour, lift, slot);
  if (shut) return err(shut);
  const head = await book.read.book.findUnique({ where: { id: 1 }, select: { timeZone: true } });
  const dayOfUse = dayForLift(pour, dateIn(head?.timeZone ?? 'UTC', now));
  const ask = { jobId: pour.job.id, purpose: pour.job.purpose, dayOfUse };
  const [newest, ...older] = otherPartsOf(lift, slot);
  let reply = await scanToPull(book, { ...ask, pairedLabel: newest, scan }, now);
  if (!reply.ok) return reply;
  // Mixed with several, it is as good as it is with the worst of them.
  for (const pairedLabel of older) {
    const next = await scanToPull(book, { ...ask, pairedLabel, scan }, now);
    if (!next.ok) return next;
    if (isWorse(next.value, reply.value)) reply = next;
  }
  if (reply.value.kind === 'piece') {
    return ok({
      kind: 'nothing',
      what: 'That is a piece of wood.',
      todo: 'Scan the tin or jug of resin.',
      teach: false,
    });
  }
  const line = reply.value.kind === 'container' ? reply.value.line : undefined;
  const wrong = line && refuseContainer(pour, lift, slot, line);
  if (wrong) return err(wrong);
  const beside = await besideItsLots(book.read, { pourId, part: slot.part });
  return ok(withVerdicts(reply.value, beside));
}

function isWorse(one: PullReply, other: PullReply): boolean {
  return one.kind === 'container' && other.kind === 'container' && isWorseWord(one.verdict.word, other.verdict.word);
}

/** The answer with its verdicts as they are beside the lots that the pour is of already. */
function withVerdicts(
  answer: Exclude<PullReply, { kind: 'piece' }>,
  beside: BesideItsLots,
): Exclude<PullReply, { kind: 'piece' }> {
  const judged = <J extends { line: ContainerLine; verdict: Verdict }>(one: J): J => ({
    ...one,
    verdict: beside(one.line, one.verdict),
  });
  if (answer.kind === 'container') return judged(answer);
  return answer.kind === 'choose' ? { ...answer, options: answer.options.map(judged) } : answer;
}

/** A lift that stands, with its pour. */
export async function liftOf(
  tx: Parameters<typeof readPour>[0],
  pourId: number,
  nr: number,
): Promise<Result<{ pour: PourLine; lift: LiftLine }, Refusal>> {
  const pour = await readPour(tx, pourId);
  if (!pour) return err({ code: 'pour-gone' });
  const lift = pour.lifts.find((each) => each.nr === nr);
  return lift ? ok({ pour, lift }) : err({ code: 'pour-gone' });
}

/** The day that counts for whatever goes into a pour: that of its last lift, or today where it has slipped. */
export const dayForLift = ({ lastLift }: Pick<PourLine, 'lastLift'>, today: CalendarDate): CalendarDate =>
  lastLift > today ? lastLift : today;
