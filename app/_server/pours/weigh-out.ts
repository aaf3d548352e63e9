import type { Command } from '@/app/_server/act';
import { type Pen, writeEntry } from '@/app/_server/ledger/write-entry';
import { otherPartOf, refuseContainer, refuseSlot, type Slot } from '@/app/_server/pours/refuse-for-lift';
import { dayForLift, liftOf } from '@/app/_server/pours/scan-for-lift';
import { type TakenOut, takenOut } from '@/app/_server/pours/taken-out';
import { refusePromised } from '@/app/_server/promises/refuse-promised';
import { spendPromise } from '@/app/_server/promises/spend-promise';
import { judgeAsk } from '@/app/_server/pull/judge-ask';
import { overrideFor } from '@/app/_server/pull/override-for';
import { pairedPart } from '@/app/_server/pull/paired-part';
import type { Refusal } from '@/app/_server/refusal';
import { loadContainer } from '@/app/_server/stock/load-container';
import { STANDS } from '@/app/_server/timeline/standing';
import { dateIn } from '@/shared/calendar/date-in';
import { writeOpened } from '@/shared/ledger/opened';
import { err, ok, type Result } from '@/shared/result/result';
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
};

export type WeighedNow = { entryId: number; label: string; mass: number; left: number; word: VerdictWord };

const WORSE: Record<VerdictWord, number> = { use: 0, care: 1, stop: 2 };

/**
 * Writes that a part of a batch was weighed out of a container: what is in it goes down, what was promised to the job is
 * used, and the verdict is judged again for the day of the last lift. Each weighing is an entry of its own, so that a
 * half-finished pull is in the book as far as it went.
 */
export const weighOutForLift: Command<WeighOut, WeighedNow> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'weighed-out', request: input }, async (pen) => {
    const found = await liftOf(pen.tx, input.pourId, input.nr);
    if (!found.ok) return found;
    const { pour, lift } = found.value;
    const shut = refuseSlot(pour, lift, input);
    if (shut) return err(shut);
    const line = await loadContainer(pen.tx, input.label);
    if (!line) return err({ code: 'not-found', field: 'label', facts: { label: input.label } });
    const wrong = refuseContainer(pour, lift, input, line);
    if (wrong) return err(wrong);
    const out = await takenOut(pen.tx, line, input);
    if (!out.ok) return out;
    const jobId = pour.job.id;
    const today = dateIn(pen.book.timeZone, pen.now);
    const judged = await judge(
      pen,
      line,
      { ...input, jobId },
      {
        purpose: pour.job.purpose,
        dayOfUse: dayForLift(pour, today),
        today,
        pairedLabel: otherPartOf(lift, input),
        taken: out.value.taken,
      },
    );
    if (!judged.ok) return judged;
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
    };
    await pen.enter(
      {
        jobId,
        productId: line.productId,
        why: [sayFor(pour.name, lift, input, out.value), judged.value.reason].filter(Boolean).join('; '),
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
    const need = await pen.tx.need.findFirst({
      where: { liftId: lift.id, resinPart: input.part, ...STANDS },
      select: { id: true },
    });
    await spendPromise(pen, { jobId, stockId: line.stockId, taken: out.value.taken, needId: need?.id });
    return ok(answer);
  });

type Line = NonNullable<Awaited<ReturnType<typeof loadContainer>>>;
type JudgeFor = {
  purpose: 'client' | 'own' | 'test';
  dayOfUse: Parameters<typeof judgeAsk>[1]['dayOfUse'];
  today: Parameters<typeof judgeAsk>[2]['today'];
  pairedLabel: string | undefined;
  taken: number;
};

async function judge(
  pen: Pen,
  line: Line,
  input: WeighOut & { jobId: number },
  { purpose, dayOfUse, today, pairedLabel, taken }: JudgeFor,
): Promise<Result<{ word: VerdictWord; reason: string | undefined; fields: object }, Refusal>> {
  const paired = await pairedPart(pen.tx, line, { jobId: input.jobId, pairedLabel });
  if (!paired.ok) return paired;
  const verdict = judgeAsk(line, { purpose, asked: taken, dayOfUse }, { today, pairedWith: paired.value });
  if (WORSE[verdict.word] > WORSE[input.seen]) {
    return err({ code: 'verdict-changed', facts: { label: line.label, word: verdict.word } });
  }
  const overridden = await overrideFor(pen, line, verdict, input, today);
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
