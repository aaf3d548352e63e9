import { type BookHead, readBook } from '@/app/_server/book/read-book';
import { type JobLine, loadJob } from '@/app/_server/jobs/read-jobs';
import { freeFor } from '@/app/_server/promises/free-for';
import type { Ask } from '@/app/_server/pull/ask';
import { holdWhy } from '@/app/_server/pull/hold-why';
import { judgeAsk } from '@/app/_server/pull/judge-ask';
import { type MixedWith, mixedWith } from '@/app/_server/pull/mixed-with';
import { pairedPart } from '@/app/_server/pull/paired-part';
import { type PromisedElsewhere, promisedElsewhere } from '@/app/_server/pull/promised-elsewhere';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { loadContainer, loadSisters } from '@/app/_server/stock/load-container';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import { testPoursFor } from '@/shared/shelf-life/test-pours-for';
import type { PairedPart } from '@/shared/shelf-life/types/reason';
import type { Purpose, Verdict } from '@/shared/shelf-life/types/verdict';

/** The latest test pour of a container, its lot, or of it with the other part. An override may rest on it when it passed. */
type LatestTestPour = {
  id: number;
  madeOn: CalendarDate;
  passed: boolean;
  method: string;
  note: string;
  photo: string | null;
  /** The other part, where the two were poured together. */
  together: string | null;
};

export type PullAnswer = {
  line: ContainerLine;
  verdict: Verdict;
  today: CalendarDate;
  job: JobLine | null;
  purpose: Purpose;
  hazards: string[];
  safetySheet: string;
  densityGramsPerLitre: number | null;
  testPour: LatestTestPour | null;
  /** The other part it was judged against. */
  pairedWith: PairedPart | null;
  /** How that part stands on the day. */
  mixedWith: MixedWith | null;
  /** What of it is promised to other jobs. */
  elsewhere: PromisedElsewhere | null;
  /** What was written when the container or its lot was held; empty where nothing was. */
  heldBecause: { container: string; lot: string };
};

/** The full answer for a container on a job and a day: verdict, reasons, what to take instead. Writes nothing. */
export async function answerPull(
  book: OpenBook,
  ask: Ask,
  now: Date,
  /** The title page, where it was read for the same question before. */
  known?: BookHead,
): Promise<Result<PullAnswer, Refusal>> {
  const head = known ?? (await readBook(book, now));
  if (!head) return err({ code: 'no-book-yet' });
  const [line, job] = await Promise.all([
    loadContainer(book.read, ask.label),
    ask.jobId === undefined ? null : loadJob(book.read, ask.jobId),
  ]);
  if (!line) return err({ code: 'not-found', facts: { label: ask.label } });
  if (job === undefined) return err({ code: 'not-found', field: 'jobId' });
  const purpose = job?.purpose ?? ask.purpose;
  const [[product], paired] = await Promise.all([
    book.read.$queryRaw<{ hazards: string; safetySheet: string; densityGramsPerLitre: number | null }[]>`
      SELECT "hazards", "safetySheet", "densityGramsPerLitre" FROM "Product" WHERE "id" = ${line.productId}`,
    pairedPart(book.read, line, ask),
  ]);
  if (!paired.ok) return paired;
  const pairedWith = paired.value;
  const { container, lot } = line.candidate;
  const [testPour, mixed, containerWhy, lotWhy, elsewhere] = await Promise.all([
    latestTestPour(book, line, { today: head.today, pairedWith }),
    mixedWith(book.read, line, pairedWith, { purpose, dayOfUse: ask.dayOfUse }, head.today),
    holdWhy(book.read, line.stockId, container.hold),
    holdWhy(book.read, line.lotId, lot.hold),
    promisedElsewhere(book, line, { jobId: ask.jobId, timeZone: head.timeZone }),
  ]);
  const judgeWith = (sisters?: ContainerLine[]) =>
    judgeAsk(line, { ...ask, purpose }, { today: head.today, pairedWith, sisters });
  // What to take instead is only asked where this one is not simply good.
  const alone = judgeWith();
  const verdict =
    alone.word === 'use' ? alone : judgeWith(await freeFor(book.read, await loadSisters(book.read, line), ask.jobId));
  return ok({
    line,
    verdict,
    today: head.today,
    job,
    purpose,
    hazards: product?.hazards.split(',').filter(Boolean) ?? [],
    safetySheet: product?.safetySheet ?? '',
    densityGramsPerLitre: product?.densityGramsPerLitre ?? null,
    testPour,
    pairedWith: pairedWith ?? null,
    mixedWith: mixed,
    elsewhere,
    heldBecause: { container: containerWhy, lot: lotWhy },
  });
}

async function latestTestPour(
  book: OpenBook,
  line: ContainerLine,
  asked: { today: CalendarDate; pairedWith: PairedPart | undefined },
): Promise<LatestTestPour | null> {
  const latest = testPoursFor(line.candidate, asked).at(-1)?.pour;
  if (!latest) return null;
  const row = await book.read.inspection.findUnique({
    where: { id: Number(latest.id) },
    select: { id: true, madeOn: true, passed: true, method: true, note: true, photo: { select: { file: true } } },
  });
  if (!row) return null;
  return {
    ...row,
    madeOn: row.madeOn as CalendarDate,
    photo: row.photo?.file ?? null,
    together: latest.together ? (asked.pairedWith?.label ?? null) : null,
  };
}
