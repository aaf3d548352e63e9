import { isHeld } from '@/app/_server/trace/holdable';
import type { TraceNode } from '@/app/_server/trace/name-things';
import { STAGE_WORDS, sayWhose } from '@/app/(shop)/jobs/_ui/say-job';
import { sayLookDay, sayLookResult } from '@/app/(shop)/samples/look-words';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { faultKind, sayFault } from '@/shared/faults/fault-kinds';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { Purpose } from '@/shared/shelf-life/types/verdict';
import type { TraceKey, TraceKind } from '@/shared/trace/trace-graph';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A thing of a trace in words, ready to be drawn. */
export type SaidNode = {
  key: TraceKey;
  kind: TraceKind;
  href: string;
  /** The one line that names it. */
  title: string;
  /** A code to be read off the thing, in the face for codes. */
  code: string;
  /** What is left of it, or what became of it. */
  state: string;
  where: string;
  isStart: boolean;
  isHeld: boolean;
  isLeft: boolean;
  /** A sample that was thrown away or lost. */
  isGone: boolean;
};

export const KIND_WORDS: Readonly<Record<TraceKind, { one: string; many: string }>> = {
  lot: { one: 'Lot', many: 'Lots' },
  container: { one: 'Container', many: 'Containers' },
  lift: { one: 'Lift', many: 'Lifts' },
  sample: { one: 'Sample', many: 'Samples' },
  job: { one: 'Job', many: 'Jobs' },
  piece: { one: 'Piece', many: 'Pieces' },
  fault: { one: 'Fault', many: 'Faults' },
};

const HOLD_WORDS = { free: '', 'on-hold': 'on hold', quarantine: 'in quarantine', recalled: 'recalled' } as const;
const PIECE_WORDS: Readonly<Record<string, string>> = {
  here: 'in the shop',
  cut: 'cut up',
  taken: 'taken',
  gone: 'gone',
};
const FAULT_WORDS: Readonly<Record<string, string>> = { settled: 'settled', undone: 'taken back' };

const SAMPLE_WORDS: Readonly<Record<string, string>> = { gone: 'gone', undone: 'taken back' };

export type SayNode = { prefer: UnitSystem; order: DateOrder; today: CalendarDate };

export function sayNode(node: TraceNode, say: SayNode): SaidNode {
  const isLeft = (node.kind === 'container' || node.kind === 'piece') && (node.left?.amount ?? 0) > 0;
  return {
    key: node.key,
    kind: node.kind,
    href: node.href,
    title: titleOf(node),
    code: node.label ? printOwnLabel(node.label as OwnLabelCode) : node.kind === 'lot' ? (node.code ?? '') : '',
    state: [stateOf(node, say), heldOf(node)].filter(Boolean).join(', '),
    where: (isLeft || (node.kind === 'sample' && node.state === 'kept') ? node.where : null) ?? '',
    isStart: node.way === 'start',
    isHeld: isHeld(node) && (isLeft || node.kind === 'lot'),
    isLeft,
    isGone: node.kind === 'sample' && node.state !== 'kept',
  };
}

/** Its own hold, or that of its lot, which holds it all the same. */
function heldOf({ hold, lotHold }: TraceNode): string {
  if (hold && hold !== 'free') return HOLD_WORDS[hold];
  return lotHold && lotHold !== 'free' ? `its lot is ${HOLD_WORDS[lotHold]}` : '';
}

function titleOf({ kind, title, nr }: TraceNode): string {
  if (kind === 'lift') return nr === 0 ? `${title}, seal coat` : `${title}, lift ${nr}`;
  return kind === 'fault' ? sayFault(faultKind(title)) : title;
}

function stateOf(node: TraceNode, { prefer, order, today }: SayNode): string {
  const { kind, state, left, day, client, seen } = node;
  const said = day ? sayDate(day as CalendarDate, { order, today }) : '';
  if (kind === 'container' && left) {
    if (left.amount === 0) return 'used up';
    return `${printQuantity(amountOf(left.unit, left.amount), left.unit, { prefer, rounding: 'down' })} left, ${state}`;
  }
  if (kind === 'piece') return PIECE_WORDS[state ?? ''] ?? '';
  if (kind === 'lift') return said ? `poured ${said}` : 'not poured yet';
  if (kind === 'sample') {
    const now = SAMPLE_WORDS[state ?? ''] ?? sayLookDay(day as CalendarDate | null, { order, today });
    return [seen ? `found ${sayLookResult(seen).toLowerCase()}` : '', now].filter(Boolean).join(', ');
  }
  if (kind === 'fault') return [`found ${said}`, FAULT_WORDS[state ?? '']].filter(Boolean).join(', ');
  if (!client) return '';
  return `${sayWhose({ purpose: client.purpose as Purpose, client: client.name })}, ${STAGE_WORDS[client.stage].toLowerCase()}`;
}
