import { outlineOfPiece } from '@/app/_server/fits/outline-of-piece';
import { type JobLine, jobPage } from '@/app/_server/jobs/read-jobs';
import { poursOfJob } from '@/app/_server/pours/read-pour';
import { loadPiece, type PieceLine } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';
import type { Outline } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';

/** What a fault was found on, as far as the address says. */
export type FaultAsk = { jobId?: number; liftId?: number; label?: string };

type PieceChoice = {
  label: string;
  species: string;
  form: string;
  /** Where it can be tapped; none of a pack, or where its widths make no outline. */
  drawing: { outline: Outline; marks: PieceMarks } | undefined;
};

export type FaultChoices = {
  job: JobLine | undefined;
  /** Lifts of the job something was weighed for, the newest pour last. */
  lifts: { id: number; nr: number; pour: string; on: string | null }[];
  pieces: PieceChoice[];
  /** A container it was found on. */
  container: { label: string; product: string } | undefined;
};

/** What a new fault can be a fault of; undefined where the address names nothing of the book. */
export async function choicesForFault(book: OpenBook, ask: FaultAsk): Promise<FaultChoices | undefined> {
  const lift =
    ask.liftId === undefined
      ? null
      : await book.read.lift.findUnique({ where: { id: ask.liftId }, select: { pour: { select: { jobId: true } } } });
  const stock =
    ask.label === undefined
      ? null
      : await book.read.stock.findUnique({
          where: { label: ask.label },
          select: { kind: true, ownerJobId: true, container: { select: { product: { select: { name: true } } } } },
        });
  const jobId = ask.jobId ?? lift?.pour.jobId ?? stock?.ownerJobId ?? undefined;
  const page = jobId === undefined ? undefined : await jobPage(book, jobId);
  if (!page && !stock) return undefined;
  const pours = page ? await poursOfJob(book.read, page.job.id) : [];
  const asked = ask.label !== undefined && stock?.kind === 'piece' ? await loadPiece(book.read, ask.label) : undefined;
  const others = (page?.pieces ?? []).filter(({ label }) => label !== asked?.label);
  return {
    job: page?.job,
    lifts: pours.flatMap(({ name, lifts }) =>
      lifts
        .filter(({ id, weighed, poured }) => weighed.length > 0 || poured || id === ask.liftId)
        .map(({ id, nr, poured }) => ({ id, nr, pour: name, on: poured?.on ?? null })),
    ),
    pieces: [...(asked ? [asked] : []), ...others].map(choiceOf),
    container:
      ask.label !== undefined && stock?.kind === 'container' && stock.container
        ? { label: ask.label, product: stock.container.product.name }
        : undefined,
  };
}

function choiceOf(line: PieceLine): PieceChoice {
  const outline = line.form === 'pack' ? undefined : outlineOfPiece(line);
  return {
    label: line.label,
    species: line.species,
    form: line.form,
    drawing: outline?.ok ? { outline: outline.value, marks: line.marks } : undefined,
  };
}
