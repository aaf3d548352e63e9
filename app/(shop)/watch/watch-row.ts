import type { ContainerLine } from '@/app/_server/stock/judgeable';
import type { PieceLine } from '@/app/_server/stock/load-piece';
import type { Watched } from '@/app/_server/watch/read-watch';
import { REASONS_OF, type WatchList } from '@/app/_server/watch/watch-list';
import type { RibbonRow } from '@/app/_ui/rule/ribbon-table';
import type { WatchRow } from '@/app/(shop)/watch/_ui/watch-rows';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { daysBetween } from '@/shared/calendar/days-between';
import { sayDate } from '@/shared/calendar/say-date';
import { sayDays } from '@/shared/calendar/say-days';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { sayLimit } from '@/shared/shelf-life/say-limit';
import { sayReason } from '@/shared/shelf-life/say-reason';
import type { Reason } from '@/shared/shelf-life/types/reason';
import { whatToDo } from '@/shared/shelf-life/what-to-do';
import type { UnitSystem } from '@/shared/units/unit-system';
import { judgePiece } from '@/shared/wood/judge-piece';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';

const HOLDS: Readonly<Record<string, string>> = {
  'on-hold': 'on hold',
  quarantine: 'in quarantine',
  recalled: 'recalled',
};

/** Of several containers the lot's page, of one its own. */
const hrefOf = ({ line, count }: Watched) => (count > 1 ? `/lots/${line.lotId}` : `/containers/${line.label}`);

function labelOf({ line, count }: Watched): string {
  if (count === 1) return printOwnLabel(line.label);
  return `${line.lotCode ? `Lot ${line.lotCode}` : 'Lot unmarked'}, ${count} containers`;
}

const nameOf = ({ product, maker }: ContainerLine) => (maker ? `${product}, ${maker}` : product);

/** A container or a lot on the shared rule: past its day, or to be used first. */
export function ribbonRow(watched: Watched, { today, order }: { today: CalendarDate; order: DateOrder }): RibbonRow {
  const { line, verdict } = watched;
  const last = verdict.governing?.lastGoodDay ?? today;
  const left = daysBetween(today, last);
  return {
    id: `${line.stockId}`,
    name: nameOf(line),
    label: labelOf(watched),
    href: hrefOf(watched),
    limits: verdict.limits
      .filter((limit) => limit.effective)
      .map((limit) => ({
        lastGoodDay: limit.lastGoodDay,
        label: sayLimit(limit, { today, order }),
        governing: limit === verdict.governing,
      })),
    openedOn: line.candidate.container.opened?.on,
    word: verdict.word,
    says:
      left < 0
        ? `good until ${sayDate(last, { order, today })}`
        : left === 0
          ? 'good to today'
          : `good to ${sayDate(last, { order, today })}`,
    note:
      left < 0 ? `${sayDays(left)}. Test it or write it off` : left === 0 ? 'its last day' : `${sayDays(left)} left`,
  };
}

/** A container or a lot in one of the other lists. */
export function watchRow(
  list: WatchList,
  watched: Watched,
  { today, order, prefer }: { today: CalendarDate; order: DateOrder; prefer: UnitSystem },
): WatchRow {
  const { line, verdict, openedDays = 0 } = watched;
  const reason = reasonOf(list, verdict.reasons);
  const toDo = reason && whatToDo(reason, { materialKind: line.kind, prefer });
  const common = {
    id: `${line.stockId}`,
    href: list === 'unconfirmed' ? `/lots/${line.lotId}` : hrefOf(watched),
    name: nameOf(line),
    label: labelOf(watched),
    place: watched.count === 1 ? line.place : null,
    word: verdict.word,
  };
  if (list === 'forgotten') {
    return {
      ...common,
      why: `Opened ${sayDays(-openedDays)} and not touched in two months.`,
      toDo: 'Look into it. Weigh what is left, or write it off.',
    };
  }
  if (list === 'retest') {
    const ends = verdict.governing?.lastGoodDay ?? today;
    const left = daysBetween(today, ends);
    return {
      ...common,
      href: watched.count > 1 || !line.candidate.container.opened ? `/lots/${line.lotId}` : common.href,
      says: left < 0 ? `lapsed ${sayDays(left)}` : left === 0 ? 'its last day' : `${sayDays(left)} left`,
      why: `It rests on a test that ${left < 0 ? 'held' : 'holds'} to ${sayDate(ends, { order, today })}.`,
      toDo: 'Test it again before it goes into a job, and write down what you see.',
    };
  }
  return {
    ...common,
    says: reason && HOLDS[reason.code],
    why: reason ? sayReason(reason, { today, order, prefer }) : '',
    toDo,
  };
}

/** The reason that put it into the list: not always the worst, since it may also be past its day. */
function reasonOf(list: WatchList, reasons: readonly Reason[]): Reason | undefined {
  const codes = REASONS_OF[list];
  return reasons.find((reason) => codes?.includes(reason.code)) ?? reasons[0];
}

/** A piece of wood on hold. */
export function pieceWatchRow(piece: PieceLine, today: CalendarDate): WatchRow {
  const verdict = judgePiece(piece.facts, today);
  const held = verdict.reasons.find((reason) => reason.code === 'held');
  const said = held && sayPieceReason(held);
  return {
    id: `${piece.stockId}`,
    href: `/pieces/${piece.label}`,
    name: `${piece.species} ${piece.form}`,
    label: printOwnLabel(piece.label),
    place: piece.place,
    word: verdict.word,
    says: HOLDS[piece.facts.hold],
    why: said?.says ?? '',
    toDo: said?.todo,
  };
}
