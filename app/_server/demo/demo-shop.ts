import type { Command } from '@/app/_server/act';
import type { Who } from '@/app/_server/who/who';
import type { OpenBook } from '@/prisma/open-book';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { dateIn } from '@/shared/calendar/date-in';

export const DEMO_TIME_ZONE = 'Europe/London';

const MAREN: Who = { who: 'Maren', device: 'Bench phone' };
const TOBI: Who = { who: 'Tobi', device: 'Saw room phone' };
const PEOPLE = { maren: MAREN, tobi: TOBI };
export type Person = keyof typeof PEOPLE;

/** One thing that happened in the demo workshop: how many days before the day it is made, when in that day, by whom. */
export type DemoAct = {
  daysAgo: number;
  /** Hour in UTC, 8 to 16: the same day in the workshop's time zone, summer and winter. */
  hour: number;
  by: Person;
  act: (shop: DemoShop) => Promise<unknown>;
};

/** What a demo act writes with: its own instant, its own keys, and what earlier acts left under a name. */
export type DemoShop = {
  book: OpenBook;
  /** The day of the act. */
  on: CalendarDate;
  /** A day counted from the day the demo is made; negative is before it. */
  day: (fromToday: number) => CalendarDate;
  /** Runs a command as the act's person at the act's instant; a refusal is a mistake in the demo and throws. */
  run: <I, A>(command: Command<I, A>, input: I) => Promise<A>;
  /** Keeps an id, a label or a list of labels under a name. */
  keep: (name: string, value: string | number) => void;
  label: (name: string) => string;
  id: (name: string) => number;
};

/** Runs the acts in the order in which they happened. */
export async function liveThrough(book: OpenBook, now: Date, acts: readonly DemoAct[]): Promise<void> {
  const today = dateIn(DEMO_TIME_ZONE, now);
  const kept = new Map<string, string | number>();
  const when = (act: DemoAct) => -act.daysAgo * 24 + act.hour;
  const inOrder = acts.map((act, nr) => ({ act, nr })).sort((a, b) => when(a.act) - when(b.act) || a.nr - b.nr);
  let keys = 0;
  // Acts of one hour go on where the one before them ended.
  let last = 0;
  for (const { act } of inOrder) {
    if (act.daysAgo < 1) throw new Error('A demo act lies in the past.');
    const on = addDays(today, -act.daysAgo);
    const at = Date.parse(`${on}T${String(act.hour).padStart(2, '0')}:00:00Z`);
    let minutes = 0;
    await act.act({
      book,
      on,
      day: (fromToday) => addDays(today, fromToday),
      async run(command, input) {
        keys += 1;
        minutes += 2;
        last = Math.max(at + minutes * 60_000, last + 60_000);
        const by = {
          who: PEOPLE[act.by],
          key: `demo-${String(keys).padStart(5, '0')}`,
          now: new Date(last),
        };
        const result = await command(book, by, input);
        if (!result.ok) throw new Error(`The demo was refused ${JSON.stringify({ input, error: result.error })}`);
        return result.value.answer;
      },
      keep: (name, value) => {
        if (kept.has(name)) throw new Error(`The demo already keeps ${name}.`);
        kept.set(name, value);
      },
      label: (name) => String(find(kept, name)),
      id: (name) => Number(find(kept, name)),
    });
  }
}

function find(kept: ReadonlyMap<string, string | number>, name: string): string | number {
  const value = kept.get(name);
  if (value === undefined) throw new Error(`The demo keeps nothing under ${name}.`);
  return value;
}
