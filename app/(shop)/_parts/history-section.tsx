import { bookForPage } from '@/app/_server/book/book-for-page';
import type { HistoryOf } from '@/app/_server/ledger/entries-of';
import { history } from '@/app/_server/ledger/history';
import { Section } from '@/app/_ui/section';
import { HistoryRows } from '@/app/(shop)/_parts/history/history-rows';
import { sayEntry } from '@/app/(shop)/_parts/history/say-entry';

/** The history of a thing, a lot, a product, a place or a job, newest first, each entry with the key that reverses it. */
export async function HistorySection({ of }: { of: HistoryOf }) {
  const { book, head } = await bookForPage();
  const { entries, more } = await history(book, of);
  const context = { timeZone: head.timeZone, today: head.today, order: head.dateOrder, prefer: head.units };
  const said = entries.map((entry) => sayEntry(entry, context));
  return (
    <Section title="History">
      {said.length === 0 ? (
        <p>Nothing was written about this yet.</p>
      ) : (
        // A new entry, or a reversal, starts the list afresh: what was fetched below it may have changed.
        <HistoryRows key={`${said[0]?.id}/${head.revision}`} of={of} first={said} more={more} label="History" />
      )}
    </Section>
  );
}
