import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { joinConditions } from '@/app/_server/stock/conditions';
import { err, ok } from '@/shared/result/result';
import type { Condition } from '@/shared/shelf-life/types/container-facts';

/** What was seen in a container, as it is now: everything that is wrong with it, and how that came to be. */
export const noteCondition: Command<{ label: string; conditions: Condition[]; why: string }, { label: string }> = (
  book,
  by,
  input,
) =>
  writeEntry(book, { ...by, kind: 'condition-noted', request: input }, async (pen) => {
    const row = await pen.tx.stock.findUnique({ where: { label: input.label }, select: { id: true, condition: true } });
    if (!row) return err({ code: 'not-found' });
    const condition = joinConditions(input.conditions);
    // Taking a note back is a decision (it was warmed, stirred, looked at again): it needs its reason.
    const before = row.condition.split(',').filter(Boolean);
    const cleared = before.some((each) => !condition.split(',').includes(each));
    if (cleared && input.why.trim() === '') return err({ code: 'reason-needed', field: 'why' });
    await pen.enter({ why: input.why.trim() }, { label: input.label });
    const moved = await pen.move(row.id, { condition });
    return moved.ok ? ok({ label: input.label }) : moved;
  });
