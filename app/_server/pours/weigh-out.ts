import type { Command } from '@/app/_server/act';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { refuseJoin, type SaidOfBelow, sayOfBelow } from '@/app/_server/pours/join-below';
import { type BesideItsLots, besideItsLots } from '@/app/_server/pours/other-lot';
import { otherPartsOf, refuseContainer, refuseSlot, type Slot } from '@/app/_server/pours/refuse-for-lift';
import { dayForLift, liftOf } from '@/app/_server/pours/scan-for-lift';
import { spendForLift } from '@/app/_server/pours/spend-for-lift';
import { type TakenOut, takenOut } from '@/app/_server/pours/taken-out';
import { refusePromised } from '@/app/_server/promises/refuse-promised';
import { judgeAsk } from '@/app/_server/pull/judge-ask';
import { overrideFor } from '@/app/_server/pull/override-for';
import { pairedPart } from '@/app/_server/pull/paired-part';
import type { Refusal } from '@/app/_server/refusal';
import { loadContainer } from '@/app/_server/stock/load-container';
import { dateIn } from '@/shared/calendar/date-in';
import { writeOpened } from '@/shared/ledger/opened';
import { err, ok, type Result } from '@/shared/result/result';
import { isWorseWord } from '@/shared/shelf-life/is-worse-word';
import type { VerdictWord } from '@/shared/shelf-life/types/verdict';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { milligrams } from '@/shared/units/stock-unit';

/** One part of one batch, out of one container. */
export type WeighOut = Slot & {
  pourId: number;
  nr: number;
  label: string;
  /** What the screen says came out, milligrams; with `weighed`, checked against what the weights say. */
  mass: number;
  /** The container on the scale. */
  weighed?: { beforeMg?: number; afterMg: number };
  /** The word on the asker's screen; a worse one now is shown before anything is written. */
  seen: VerdictWord;
  override?: { reason: string; inspectionId: number };
  /** Of the lift below, where it is too early to pour on it or it has to be sanded. */
  below?: SaidOfBelow;
};

export type WeighedNow = {
  entryId: number;
  label: string;
  mass: number;
  left: number;
  word: VerdictWord;
  /** Kept with it: what was said of the lift below. */
  below?: SaidOfBelow;
};

/**
 * Writes that a part of a batch was weighed out of a container: what is in it goes down, what was promised to the job is
 * used, and the verdict is judged again for the day of the last lift. On a lift that was poured too lately it needs a reason,
 * on one past its window that it was sanded. Each weighing is an entry of its own, so that a
 * half-finished pull is in the book as far as it went.
 */
export const weighOutForLift: Command<WeighOut, WeighedNow> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'weighed-out', request: input }, async (pen) => {
    const found = await liftOf(pen.tx, input.pourId, input.nr);
    if (!found.ok) return found;
    const { pour, lift } = found.value;
    const shut = refuseSlot(pour, lift, input);
    if (shut) return err(shut);
    const tooSoon = refuseJoin(pour, lift, pen.now, input.below ?? {});
    if (tooSoon) return err(tooSoon);
    const below = sayOfBelow(pour, lift, pen.now, input.below ?? {});
    const line = await loadContainer(pen.tx, input.label);
    if (!line) return err({ code: 'not-found', field: 'label', facts: { label: input.label } });
    const wrong = refuseContainer(pour, lift, input, line);
    if (wrong) return err(wrong);
    const out = await takenOut(pen.tx, line, input);
    if (!out.ok) return out;
    const jobId = pour.job.id;
    const today = dateIn(pen.book.timeZone, pen.now);
    const beside = await besideItsLots(pen.tx, input);
    const { purpose } = pour.job;
    const how = { purpose, dayOfUse: dayForLift(pour, today), today, beside, taken: out.value.taken };
    const [newest, ...older] = otherPartsOf(lift, input);
    let judged = await judge(pen, line, { ...input, jobId }, { ...how, pairedLabel: newest });
    if (!judged.ok) return judged;
    // Mixed with several, it is as good as it is with the worst of them.
    for (const pairedLabel of older) {
      const next = await judge(pen, line, { ...input, jobId }, { ...how, pairedLabel });
      if (!next.ok) return next;
      if (isWorseWord(next.value.word, judged.value.word)) judged = next;
    }
    const promised = await refusePromised(pen.tx, {
      stockId: line.stockId,
      jobId,
      taken: out.value.taken,
      left: line.left,
    });
    if (promised) return err(promised);
    const answer: WeighedNow = {
      entryId: pen.entryId,
      label: line.label,
      mass: out.value.mass,
      left: line.left - out.value.taken,
      word: judged.value.word,
      ...(below.words && { below: below.kept }),
    };
    await pen.enter(
      {
        jobId,
        productId: line.productId,
        why: [sayFor(pour.name, lift, input, out.value), below.words, judged.value.reason].filter(Boolean).join('; '),
        ...judged.value.fields,
      },
      answer,
    );
    const { opened } = line.candidate.container;
    const moved = await pen.move(line.stockId, {
      quantityDelta: -out.value.taken,
      opened: opened && opened.on <= today ? undefined : writeOpened({ on: today, sureness: 'known' }),
    });
    if (!moved.ok) return moved;
    await pen.tx.weighed.create({
      data: {
        entryId: pen.entryId,
        liftId: lift.id,
        batch: input.batch,
        part: input.part,
        stockId: line.stockId,
        massMg: BigInt(out.value.mass),
        beforeMg: input.weighed?.beforeMg === undefined ? null : BigInt(input.weighed.beforeMg),
        afterMg: input.weighed ? BigInt(input.weighed.afterMg) : null,
      },
      select: { id: true },
    });
    const { part } = input;
    await spendForLift(pen, pour, { liftId: lift.id, part, stockId: line.stockId, taken: out.value.taken });
    return ok(answer);
  });

type Line = NonNullable<Awaited<ReturnType<typeof loadContainer>>>;
type JudgeFor = {
  purpose: 'client' | 'own' | 'test';
  dayOfUse: Parameters<typeof judgeAsk>[1]['dayOfUse'];
  today: Parameters<typeof judgeAsk>[2]['today'];
  pairedLabel: string | undefined;
  beside: BesideItsLots;
  taken: number;
};

async function judge(
  pen: Pen,
  line: Line,
  input: WeighOut & { jobId: number },
  { purpose, dayOfUse, today, pairedLabel, beside, taken }: JudgeFor,
): Promise<Result<{ word: VerdictWord; reason: string | undefined; fields: object }, Refusal>> {
  const paired = await pairedPart(pen.tx, line, { jobId: input.jobId, pairedLabel });
  if (!paired.ok) return paired;
  const alone = judgeAsk(line, { purpose, asked: taken, dayOfUse }, { today, pairedWith: paired.value });
  const verdict = beside(line, alone);
  if (isWorseWord(verdict.word, input.seen)) {
    return err({ code: 'verdict-changed', facts: { label: line.label, word: verdict.word } });
  }
  const overridden = await overrideFor(pen, line, verdict, input, { today, pairedWith: paired.value });
  if (!overridden.ok) return overridden;
  return ok({
    word: verdict.word,
    reason: overridden.value?.reason,
    fields: {
      verdict: verdict.word,
      verdictJson: JSON.stringify({ purpose, asked: taken, verdict: { ...verdict, instead: undefined } }),
      overrideInspectionId: overridden.value?.inspectionId,
    },
  });
}

function sayFor(
  name: string,
  { nr, batches }: { nr: number; batches: readonly unknown[] },
  { batch, part }: Slot,
  { mass, how }: TakenOut,
): string {
  const lift = nr === 0 ? 'seal coat' : `lift ${nr}`;
  const which = batches.length > 1 ? `, batch ${batch} of ${batches.length}` : '';
  const said = `${name}, ${lift}${which}: ${printQuantityExact(milligrams(mass), 'mg')} of part ${part}`;
  return how ? `${said}, ${how}` : said;
}
