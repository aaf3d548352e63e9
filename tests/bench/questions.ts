import { randomUUID } from 'node:crypto';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { BigBook } from './big-book';
import type { Pair } from './compare';

/** What is asked of a book, by the name it has in the table. */
export type Questions = { verdict: Pair[]; searches: Record<string, Pair[]>; weigh: Pair[] };

const MOST = 500;

/** The same questions of any size of book: scans of containers with something left, searches, weighings. */
export function questionsFor({ onHand }: BigBook, today: CalendarDate): Questions {
  const step = Math.max(1, Math.floor(onHand.length / MOST));
  const some = onHand.filter((_, at) => at % step === 0).slice(0, MOST);
  const day = addDays(today, 14);
  return {
    verdict: some.map(({ label }) => verdict(label, day)),
    searches: {
      'two words of a product': ['hardwax amber', 'wood glue', 'varnish satin', 'fenland pigment'].map(search),
      'beginning of a lot': ['26c1', '26a-2', '25h-9', '26f33'].map(search),
      'beginning of a label': some.slice(0, 20).map(({ label }) => search(label.slice(0, 5))),
      'a place': ['bay 12', 'bay 40', 'bay 55', 'bay 33'].map(search),
      'one word, many things': ['resin', 'tarn', 'varnish', 'clear'].map(search),
    },
    weigh: some.map(weighing),
  };
}

function verdict(label: string, day: CalendarDate): Pair {
  const query = `code=${label}&day=${day}&purpose=client&asked=40`;
  return {
    ours: { path: `/api/verdict?${query}` },
    // What may be taken instead is only read where there is a reason to; the bare route reads it where the app did.
    bare: ({ json }) => {
      const answer = json.answer as { kind: string; verdict: { word: string } };
      if (answer.kind !== 'container') throw new Error(`${label} was not read as a container.`);
      return { path: `/api/bench/bare/verdict?${query}&others=${answer.verdict.word === 'use' ? 0 : 1}` };
    },
  };
}

function search(words: string): Pair {
  const query = `q=${encodeURIComponent(words)}`;
  return { ours: { path: `/api/on-hand?${query}` }, bare: () => ({ path: `/api/bench/bare/on-hand?${query}` }) };
}

/** A weighing that always changes something: each side leaves one unit more than the other. */
function weighing({ label, left }: BigBook['onHand'][number]): Pair {
  return {
    get ours() {
      return { path: '/api/weigh', body: { key: randomUUID(), input: { label, left: left + 1 } } };
    },
    bare: () => ({ path: '/api/bench/bare/weigh', body: { label, left } }),
  };
}
