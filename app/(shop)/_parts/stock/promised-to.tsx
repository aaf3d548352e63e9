import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { promisedOf } from '@/app/_server/promises/promised-of';
import styles from '@/app/(shop)/_parts/stock/promised-to.module.css';
import { sayDate } from '@/shared/calendar/say-date';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';

/** To whom a container or a piece is promised, how much of it, for when, and who promised it; nothing where it is free. */
export async function PromisedTo({ stockId, unit, left }: { stockId: number; unit: StockUnit; left: number }) {
  const { book, head } = await bookForPage();
  const promised = await promisedOf(book.read, stockId, head.timeZone);
  if (promised.length === 0) return null;
  const { units: prefer, dateOrder: order, today } = head;
  const isPiece = unit === 'piece' && left === 1;
  const say = (amount: number) => printQuantity(amountOf(unit, amount), unit, { prefer, rounding: 'down' });
  const free = left - promised.reduce((sum, each) => sum + each.amount, 0);
  return (
    <ul className={styles.list} aria-label="Promised to">
      {promised.map((each) => (
        <li key={each.jobId}>
          {isPiece ? 'Promised to ' : `${say(each.amount)} promised to `}
          <Link href={`/jobs/${each.jobId}/needs`}>{each.job}</Link> for {sayDate(each.day, { order, today })}
          {each.on ? `, by ${each.who} on ${sayDate(each.on, { order, today })}` : ''}.
        </li>
      ))}
      {isPiece ? null : <li>{free > 0 ? `${say(free)} is free.` : 'None of it is free.'}</li>}
    </ul>
  );
}
