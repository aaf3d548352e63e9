import type { Pulled } from '@/app/_server/pull/pull-container';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import type { GivenPiece } from '@/app/_server/stock/give-piece';
import type { PieceAct } from '@/app/(shop)/pull/_ui/piece-answer';
import type { Done } from '@/app/(shop)/pull/_ui/pull-done';
import { type PullGoal, sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { sayAmount, sayLeft } from '@/app/(shop)/pull/_ui/say-amount';
import { addLife } from '@/shared/calendar/add-life';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A pull in words: what was written, what is left, what its opening began, and what is still wanted. */
export function sayPulled(
  pulled: Pulled,
  asked: number,
  answer: Extract<PullReply, { kind: 'container' }>,
  goal: PullGoal,
  { units, order }: { units: UnitSystem; order: DateOrder },
): Done {
  const { line, verdict, today } = answer;
  const label = printOwnLabel(line.label);
  const amount = sayAmount(asked, line.unit, units);
  const lines = [`Out of ${label}, ${line.product}.`];
  lines.push(
    pulled.left === 0 ? 'That was the last of it.' : `${sayLeft(pulled.left, line.unit, units)} is left in it.`,
  );
  const life = line.candidate.container.statedOpenedLife ?? line.candidate.policy.openedLife;
  // What an earlier version wrote does not name the day: it was taken when it was written.
  const takenOn = pulled.takenOn ?? today;
  if (takenOn < today) lines.push(`Taken on ${sayDate(takenOn, { order, today })}, written today.`);
  if (pulled.opened) {
    const end = life && addLife(takenOn, life);
    const sooner = end && (!verdict.governing || end < verdict.governing.lastGoodDay);
    const until = sooner ? `, so it is now good to ${sayDate(end, { order, today })}` : '';
    lines.push(
      `It was sealed: the book now says opened ${takenOn < today ? `on ${sayDate(takenOn, { order, today })}` : 'today'}${until}. Write the day on it.`,
    );
  }
  if (pulled.overridden)
    lines.push('Used against a Stop. The verdict, the test pour and your reason stay in its history.');
  const next = asked === line.left ? verdict.instead?.containers[0] : undefined;
  return {
    entryId: pulled.entryId,
    title: `${amount} for ${sayGoal(goal)}`,
    lines,
    page: { href: `/containers/${line.label}`, words: `Open the page of ${label}` },
    undoWords: `Put ${amount} back`,
    undoneWords: `${amount} is back in ${label}`,
    next:
      next && verdict.instead?.withThis
        ? {
            words: `Next: ${sayAmount(next.take, line.unit, units)} from ${printOwnLabel(next.label as OwnLabelCode)}`,
            label: next.label,
            amountText: printQuantityExact(next.take as typeof line.left, line.unit),
          }
        : undefined,
  };
}

/** What was done with a piece of wood, in words. */
export function sayGiven(given: GivenPiece, act: PieceAct, { line }: Extract<PullReply, { kind: 'piece' }>): Done {
  const label = printOwnLabel(line.label);
  const name = `${line.species} ${line.form}`;
  const page = { href: `/pieces/${line.label}`, words: `Open the page of ${label}` };
  const { entryId } = given;
  switch (act) {
    case 'take':
      return {
        entryId,
        title: `${label} is taken for ${given.job}`,
        lines: [`${name}. It is no longer on hand.`],
        page,
        undoWords: 'Put it back on hand',
        undoneWords: `${label} is on hand again`,
      };
    case 'promise':
      return {
        entryId,
        title: `${label} is promised to ${given.job}`,
        lines: [`${name}. No other job can count on it until it is freed.`],
        page,
        undoWords: 'Take the promise back',
        undoneWords: `${label} is as before`,
      };
    case 'free':
      return {
        entryId,
        title: `${label} is free`,
        lines: [`${name}. Any job may count on it again.`],
        page,
        undoWords: 'Promise it again',
        undoneWords: `${label} is promised as before`,
      };
  }
}
