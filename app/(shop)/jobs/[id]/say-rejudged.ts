import type { RejudgedStock, Rejudgement } from '@/app/_server/timeline/rejudge';
import { type SaidStock, type SayStock, sayStock } from '@/app/_server/timeline/say-stock';
import { VERDICT_WORDS } from '@/app/_ui/verdict/word';
import { sayDate } from '@/shared/calendar/say-date';

/** A verdict on stock after the moves: what is otherwise of it in words, null where nothing is; or that it is no more. */
export type StockRejudged = SaidStock & { changed: string | null; gone: boolean };

/** Verdicts on stock as they would be, then those that go away, in words. */
export function sayRejudged({ stock, gone }: Pick<Rejudgement, 'stock' | 'gone'>, context: SayStock): StockRejudged[] {
  return [
    ...stock.map((one) => ({ ...sayStock(one.now, context), changed: sayChange(one, context), gone: false })),
    ...gone.map((was) => ({
      ...sayStock(was, context),
      key: `gone ${was.key}`,
      changed: was.of === 'short' ? 'No longer short' : 'No longer taken for this',
      gone: true,
    })),
  ];
}

function sayChange({ now, was, change }: RejudgedStock, { today, order }: SayStock): string | null {
  if (change === null) return null;
  if (change === 'new' || !was) return now.of === 'short' ? 'New: it was not short' : 'New: it was not taken for this';
  const word = VERDICT_WORDS[now.word];
  const say = (day: typeof today) => sayDate(day, { order, today });
  switch (change) {
    case 'word':
      return `Changed: was ${VERDICT_WORDS[was.word]}, now ${word}`;
    case 'reason':
      return `Changed: still ${word}, for another reason`;
    case 'amount':
      return `Changed: still ${word}, for another amount`;
    case 'day':
      return `Changed: still ${word}, now for ${say(now.day)}, was for ${say(was.day)}`;
  }
}
