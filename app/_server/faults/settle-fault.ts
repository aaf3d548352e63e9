import type { Command } from '@/app/_server/act';
import { FAULT_STANDS, isSettled } from '@/app/_server/faults/standing-faults';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { faultKind, sayFault } from '@/shared/faults/fault-kinds';
import { err, ok } from '@/shared/result/result';

/** `how`: what was done about it, or why it may stay. */
export type SettleFault = { faultId: number; how: string };

/** Settles a fault with what was done about it. Once; reversing the entry opens it again. */
export const settleFault: Command<SettleFault, { entryId: number; faultId: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'fault-settled', request: input }, async (pen) => {
    const how = input.how.trim();
    if (how === '') return err({ code: 'reason-needed', field: 'how' });
    const fault = await pen.tx.fault.findFirst({
      where: { id: input.faultId, ...FAULT_STANDS },
      select: {
        id: true,
        kind: true,
        jobId: true,
        stockId: true,
        settledBy: { select: { reversedBy: { select: { id: true } } } },
      },
    });
    if (!fault) return err({ code: 'fault-gone' });
    if (isSettled(fault)) return err({ code: 'fault-settled-already' });
    const answer = { entryId: pen.entryId, faultId: fault.id };
    await pen.enter(
      { why: `${sayFault(faultKind(fault.kind))}: ${how}`, jobId: fault.jobId, stockId: fault.stockId ?? undefined },
      answer,
    );
    await pen.tx.fault.update({
      where: { id: fault.id },
      data: { settledById: pen.entryId },
      select: { id: true },
    });
    return ok(answer);
  });
