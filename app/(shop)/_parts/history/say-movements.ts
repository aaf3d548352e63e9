import type { HistoryMovement } from '@/app/_server/ledger/history';
import { CONDITION_WORDS } from '@/app/(shop)/_parts/condition-words';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { readOpened } from '@/shared/ledger/opened';
import type { Condition } from '@/shared/shelf-life/types/container-facts';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export type SayMovements = { today: CalendarDate; order: DateOrder; prefer: UnitSystem };

/** What the movements of one entry did, each part in words, for a sentence to be made of. */
export type SaidMovements = {
  /** "400 g", "3 × 2.5 kg", "2 slabs"; empty where no quantity moved. */
  amount: string;
  /** More came than went. */
  gain: boolean;
  /** "5 things " where more than one thing moved, else nothing. */
  things: string;
  place?: string;
  placeFrom?: string;
  opened?: string;
  condition?: string;
  hold?: string;
  /** For a reversal: everything that was put back. */
  back: string;
};

const HOLD_WORDS: Record<string, string> = {
  free: 'Released',
  'on-hold': 'On hold',
  quarantine: 'In quarantine',
  recalled: 'Recalled',
};

/** Says the movements of one entry, of which there may be `more` than are given. */
export function sayMovements(lines: readonly HistoryMovement[], context: SayMovements, more = 0): SaidMovements {
  const moved = lines.find((line) => line.placeFrom !== line.placeTo);
  const noted = lines.find((line) => line.conditionFrom !== line.conditionTo);
  const held = lines.find((line) => line.holdFrom !== line.holdTo);
  const given = lines.find((line) => line.jobFrom !== line.jobTo);
  const opened = lines.find((line) => line.openedFrom !== line.openedTo);
  const some = sayAmounts(lines, context);
  const amount = some && more > 0 ? `${some} and ${more} more` : some;
  const gain = lines.reduce((sum, line) => sum + line.quantityDelta, 0) > 0;
  const said: SaidMovements = {
    amount,
    gain,
    things: lines.length + more > 1 ? `${lines.length + more} things ` : '',
    place: moved?.placeTo ?? undefined,
    placeFrom: moved?.placeFrom ?? undefined,
    opened: opened && sayOpening(opened, context),
    condition: noted && sayNoted(noted),
    hold: held && (HOLD_WORDS[held.holdTo] ?? held.holdTo),
    back: '',
  };
  said.back = [
    amount && `${amount} ${gain ? 'back in' : 'out again'}`,
    moved && `back to ${moved.placeTo ?? 'no place'}`,
    said.opened && lower(said.opened),
    said.condition && lower(said.condition),
    said.hold && lower(said.hold),
    given && (given.jobTo ? `back to ${given.jobTo}` : `freed from ${given.jobFrom}`),
  ]
    .filter(Boolean)
    .join(', ')
    .replace(/^./, (first) => first.toUpperCase());
  return said;
}

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** Equal amounts are counted, so a delivery of 12 jugs is one short phrase. */
function sayAmounts(lines: readonly HistoryMovement[], { prefer }: SayMovements): string {
  const counts = new Map<string, number>();
  for (const { quantityDelta, unit, stockKind, label } of lines) {
    if (quantityDelta === 0 || unit === null) continue;
    const one =
      stockKind === 'piece' ? formOf(label) : printQuantity(amountOf(unit, Math.abs(quantityDelta)), unit, { prefer });
    counts.set(one, (counts.get(one) ?? 0) + 1);
  }
  return [...counts]
    .map(([one, count]) =>
      one.startsWith('the ')
        ? count === 1
          ? one
          : `${count} ${one.slice(4)}s`
        : count === 1
          ? one
          : `${count} × ${one}`,
    )
    .join(' and ');
}

const FORMS: Record<string, string> = { S: 'the slab', B: 'the board', H: 'the sheet', F: 'the offcut' };
const formOf = (label: string | null) => FORMS[label?.charAt(0) ?? ''] ?? 'the piece';

function sayOpening({ openedFrom, openedTo }: HistoryMovement, { today, order }: SayMovements): string {
  const to = readOpened(openedTo);
  if (!to) return 'Sealed again in the book';
  const guess = to.sureness === 'guessed' ? ' (guessed)' : '';
  const from = readOpened(openedFrom);
  const before = from
    ? `, before ${sayDate(from.on, { order, today })}${from.sureness === 'guessed' ? ' (guessed)' : ''}`
    : '';
  return `Opened ${sayDate(to.on, { order, today })}${guess}${before}`;
}

function sayNoted({ conditionFrom, conditionTo }: HistoryMovement): string {
  const split = (text: string) => text.split(',').filter(Boolean);
  const words = (list: string[]) => list.map((each) => CONDITION_WORDS[each as Condition] ?? each).join(', ');
  const seen = split(conditionTo).filter((each) => !split(conditionFrom).includes(each));
  const gone = split(conditionFrom).filter((each) => !split(conditionTo).includes(each));
  return [seen.length ? `Seen: ${words(seen)}` : '', gone.length ? `No longer: ${words(gone)}` : '']
    .filter(Boolean)
    .join('. ');
}
