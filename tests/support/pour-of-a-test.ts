import { addJob } from '@/app/_server/jobs/add-job';
import { type KeepPour, keepPour } from '@/app/_server/pours/keep-pour';
import { type KeepSheet, keepSheet } from '@/app/_server/pours/keep-sheet';
import type { PourFigures } from '@/app/_server/pours/kept-plan';
import type { OpenBook } from '@/prisma/open-book';
import { FACTS, FIGURES } from '@/tests/support/pour-figures';
import { stocked } from '@/tests/support/stock-of-a-test';
import { by, day, must, TODAY } from '@/tests/support/test-book';

let made = 0;

type ReadyToPour = { size?: number; facts?: KeepSheet['facts']; bestBeforeA?: string };

/** Both parts of a system on hand, its sheet in the book, and a client's job. */
export async function readyToPour(
  book: OpenBook,
  { size = 2_500_000, facts = FACTS, bestBeforeA = '2027-06-01' }: ReadyToPour = {},
) {
  made += 1;
  const system = `Tarn ${made}`;
  const part = (letter: 'A' | 'B') =>
    stocked(book, {
      size,
      lotCode: `${letter}-${made}`,
      dates: {
        bestBefore: { date: day(letter === 'A' ? bestBeforeA : '2027-06-01'), precision: 'day', confirmed: true },
      },
      product: {
        name: `${system} ${letter}`,
        kind: letter === 'A' ? 'resin-a' : 'resin-b',
        system: { name: system, part: letter },
      },
    });
  const [a, b] = [await part('A'), await part('B')];
  const { id: systemId } = await book.read.resinSystem.findUniqueOrThrow({ where: { name: system } });
  must(await keepSheet(book, by(), { systemId, facts }));
  const fields = { name: `River desk ${made}`, purpose: 'client' as const, client: '', dayOfUse: TODAY, note: '' };
  const { jobId } = must(await addJob(book, by(), fields));
  return { system, systemId, jobId, a: a.labels[0] ?? '', b: b.labels[0] ?? '', stockA: a.containers[0]?.stockId ?? 0 };
}

/** A pour planned for it from today. */
export async function planned(
  book: OpenBook,
  { jobId, systemId }: { jobId: number; systemId: number },
  more: Partial<Omit<KeepPour, 'figures'>> & { figures?: Partial<PourFigures> } = {},
) {
  return must(await keepPour(book, by(), pourAsk({ jobId, systemId }, more)));
}

export const pourAsk = (
  { jobId, systemId }: { jobId: number; systemId: number },
  { figures, ...more }: Partial<Omit<KeepPour, 'figures'>> & { figures?: Partial<PourFigures> } = {},
): KeepPour => ({
  jobId,
  systemId,
  name: 'River',
  first: TODAY,
  reason: '',
  typed: {},
  ...more,
  figures: { ...FIGURES, ...figures },
});
