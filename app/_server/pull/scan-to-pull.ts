import { readBook } from '@/app/_server/book/read-book';
import { type LabelSays, lookUpScan, type ScanMeaning } from '@/app/_server/codes/look-up-scan';
import { type JobLine, loadJob } from '@/app/_server/jobs/read-jobs';
import { answerPull, type PullAnswer } from '@/app/_server/pull/answer-pull';
import type { Ask } from '@/app/_server/pull/ask';
import { judgeAsk } from '@/app/_server/pull/judge-ask';
import { pairedPart } from '@/app/_server/pull/paired-part';
import { sayNotPullable } from '@/app/_server/pull/say-not-pullable';
import type { Refusal } from '@/app/_server/refusal';
import { type ContainerLine, containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import type { ScanInput } from '@/shared/scan-codes/scan-reading';
import { compareWords } from '@/shared/shelf-life/is-worse-word';
import type { Verdict } from '@/shared/shelf-life/types/verdict';
import { judgePiece, type PieceVerdict } from '@/shared/wood/judge-piece';

/** What somebody scans to pull, and what for. */
export type PullScan = Omit<Ask, 'label'> & { scan: ScanInput };

/** One container of a product that was scanned by its own bar code, with its verdict. */
type PullOption = { line: ContainerLine; verdict: Verdict };

export type PullReply =
  | ({ kind: 'container' } & PullAnswer)
  | { kind: 'piece'; line: PieceLine; verdict: PieceVerdict; today: CalendarDate; job: JobLine | null }
  /** The bar code names a product, not one container of it: these are the ones in the book, the best first. */
  | {
      kind: 'choose';
      product: string;
      productId: number;
      lot: string | null;
      today: CalendarDate;
      options: PullOption[];
    }
  /** Nothing to pull: what it is, and what to do. `code` is there when the book could be taught it. */
  | { kind: 'nothing'; what: string; todo: string; teach: boolean };

/** Reads a scan at the bench and answers it: a verdict, a piece of wood, a choice of containers, or what it is instead. */
export async function scanToPull(
  book: OpenBook,
  { scan, ...ask }: PullScan,
  now: Date,
): Promise<Result<PullReply, Refusal>> {
  const head = await readBook(book, now);
  if (!head) return err({ code: 'no-book-yet' });
  const meaning = await lookUpScan(book, scan, head.today);
  if ('stockId' in meaning) {
    if (meaning.kind === 'piece') return pieceReply(book, meaning.label, ask.jobId, head.today);
    const answer = await answerPull(book, { ...ask, label: meaning.label }, now, head);
    return answer.ok ? ok({ kind: 'container', ...answer.value }) : answer;
  }
  if (meaning.kind === 'product') return chooseReply(book, meaning, ask, head.today);
  return ok({ kind: 'nothing', ...sayNotPullable(meaning) });
}

async function pieceReply(
  book: OpenBook,
  label: string,
  jobId: number | undefined,
  today: CalendarDate,
): Promise<Result<PullReply, Refusal>> {
  const [line, job] = await Promise.all([
    loadPiece(book.read, label),
    jobId === undefined ? null : loadJob(book.read, jobId),
  ]);
  if (!line) return err({ code: 'not-found', facts: { label } });
  if (job === undefined) return err({ code: 'not-found', field: 'jobId' });
  return ok({ kind: 'piece', line, verdict: judgePiece(line.facts, today, jobId), today, job });
}

const MOST_OPTIONS = 200;

async function chooseReply(
  book: OpenBook,
  { productId, name, says }: Extract<ScanMeaning, { kind: 'product' }>,
  ask: Omit<Ask, 'label'>,
  today: CalendarDate,
): Promise<Result<PullReply, Refusal>> {
  const job = ask.jobId === undefined ? null : await loadJob(book.read, ask.jobId);
  if (job === undefined) return err({ code: 'not-found', field: 'jobId' });
  const lot = await knownLot(book, productId, says);
  const rows = await book.read.container.findMany({
    where: { productId, stock: { quantity: { gt: 0 } }, ...(lot && { lot: { code: lot } }) },
    select: judgeableSelect,
    orderBy: { stockId: 'asc' },
    take: MOST_OPTIONS,
  });
  const purpose = job?.purpose ?? ask.purpose;
  const lines = rows.map(containerLine);
  // They are all of one product, so the other part is the same for each.
  const paired = lines[0] ? await pairedPart(book.read, lines[0], ask) : ok(undefined);
  if (!paired.ok) return paired;
  const judging = { today, pairedWith: paired.value };
  const options = lines.map((line) => ({ line, verdict: judgeAsk(line, { ...ask, purpose }, judging) }));
  return ok({ kind: 'choose', product: name, productId, lot, today, options: options.sort(bestFirst) });
}

/** The lot the label names, where the book has something left of it; null when it says none or the book knows none. */
async function knownLot(book: OpenBook, productId: number, { lot }: LabelSays): Promise<string | null> {
  if (!lot) return null;
  const left = await book.read.container.findFirst({
    where: { productId, lot: { code: lot }, stock: { quantity: { gt: 0 } } },
    select: { stockId: true },
  });
  return left ? lot : null;
}

const NO_LIMIT = '9999';

/** Use before care before stop; then first to expire first, opened before sealed, by label. */
function bestFirst(a: PullOption, b: PullOption): number {
  const limit = ({ verdict }: PullOption) => verdict.governing?.lastGoodDay ?? NO_LIMIT;
  const sealed = ({ line }: PullOption) => Number(line.candidate.container.opened === undefined);
  return (
    compareWords(a.verdict.word, b.verdict.word) ||
    limit(a).localeCompare(limit(b)) ||
    sealed(a) - sealed(b) ||
    a.line.label.localeCompare(b.line.label)
  );
}
