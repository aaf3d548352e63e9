import type { Command } from '@/app/_server/act';
import { refuseClosedJob } from '@/app/_server/jobs/refuse-closed-job';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { refusePromised } from '@/app/_server/promises/refuse-promised';
import { loadPiece } from '@/app/_server/stock/load-piece';
import { dateIn } from '@/shared/calendar/date-in';
import { err, ok } from '@/shared/result/result';
import { judgePiece } from '@/shared/wood/judge-piece';

/**
 * Promises a piece to a job, takes it into the job (it leaves the shelf), or frees it from the job it was promised to.
 */
export type GivePiece = { label: string; act: 'promise' | 'take' | 'free'; jobId?: number };

/** `entryId` is what undoing it reverses. */
export type GivenPiece = { entryId: number; label: string; job: string | null };

export const givePiece: Command<GivePiece, GivenPiece> = (book, by, input) =>
  writeEntry<GivenPiece>(
    book,
    {
      ...by,
      kind: `piece-${input.act === 'free' ? 'freed' : input.act === 'take' ? 'taken' : 'promised'}`,
      request: input,
    },
    async (pen) => {
      const piece = await loadPiece(pen.tx, input.label);
      if (!piece) return err({ code: 'not-found' });
      if (input.act === 'free') {
        const answer = { entryId: pen.entryId, label: piece.label, job: null };
        await pen.enter({ jobId: piece.facts.promisedTo?.id }, answer);
        const moved = await pen.move(piece.stockId, { jobId: null });
        return moved.ok ? ok(answer) : moved;
      }
      const job =
        input.jobId === undefined
          ? null
          : await pen.tx.job.findUnique({ where: { id: input.jobId }, select: { id: true, name: true, state: true } });
      if (!job) return err({ code: 'not-found', field: 'jobId' });
      const closed = refuseClosedJob(job);
      if (closed) return err(closed);
      const verdict = judgePiece(piece.facts, dateIn(pen.book.timeZone, pen.now), job.id);
      const stop = verdict.reasons.find((reason) => reason.weight === 'stop');
      if (stop) {
        if (stop.code === 'gone') return err({ code: 'already-empty', facts: { label: piece.label } });
        const elsewhere = await refusePromised(pen.tx, { stockId: piece.stockId, jobId: job.id, taken: 1, left: 1 });
        if (elsewhere) return err({ ...elsewhere, field: 'jobId' });
        return err({ code: 'stop-not-overridable', facts: { label: piece.label, because: stop.code } });
      }
      const answer = { entryId: pen.entryId, label: piece.label, job: job.name };
      await pen.enter(
        { jobId: job.id, verdict: verdict.word, verdictJson: JSON.stringify({ piece: verdict }) },
        answer,
      );
      const moved = await pen.move(piece.stockId, { jobId: job.id, quantityDelta: input.act === 'take' ? -1 : 0 });
      return moved.ok ? ok(answer) : moved;
    },
  );
