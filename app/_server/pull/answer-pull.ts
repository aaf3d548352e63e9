import { readBook } from '@/app/_server/book/read-book';
import type { Ask } from '@/app/_server/pull/ask';
import { judgeAsk } from '@/app/_server/pull/judge-ask';
import type { Refusal } from '@/app/_server/refusal';
import type { ContainerLine } from '@/app/_server/stock/judgeable';
import { loadContainer, loadSisters } from '@/app/_server/stock/load-container';
import type { OpenBook } from '@/prisma/open-book';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { err, ok, type Result } from '@/shared/result/result';
import type { Verdict } from '@/shared/shelf-life/types/verdict';

export type PullAnswer = {
  line: ContainerLine;
  verdict: Verdict;
  today: CalendarDate;
  hazards: string[];
  safetySheet: string;
  /** The latest passed test pour of this container or its lot, which an override may rest on. */
  testPour: { id: number; madeOn: CalendarDate; note: string } | null;
};

/** The full answer for a container on a job and a day: verdict, reasons, what to take instead. Writes nothing. */
export async function answerPull(book: OpenBook, ask: Ask, now: Date): Promise<Result<PullAnswer, Refusal>> {
  const head = await readBook(book, now);
  if (!head) return err({ code: 'no-book-yet' });
  const line = await loadContainer(book.read, ask.label);
  if (!line) return err({ code: 'not-found', facts: { label: ask.label } });
  const [sisters, product, testPour] = await Promise.all([
    loadSisters(book.read, line),
    book.read.product.findUniqueOrThrow({
      where: { id: line.productId },
      select: { hazards: true, safetySheet: true },
    }),
    book.read.inspection.findFirst({
      where: {
        kind: 'test-pour',
        passed: true,
        lotId: line.lotId,
        OR: [{ containerId: null }, { containerId: line.stockId }],
      },
      orderBy: { id: 'desc' },
      select: { id: true, madeOn: true, note: true },
    }),
  ]);
  const verdict = await judgeAsk(book.read, line, ask, head.today, sisters);
  return ok({
    line,
    verdict,
    today: head.today,
    hazards: product.hazards.split(',').filter(Boolean),
    safetySheet: product.safetySheet,
    testPour: testPour ? { ...testPour, madeOn: testPour.madeOn as CalendarDate } : null,
  });
}
