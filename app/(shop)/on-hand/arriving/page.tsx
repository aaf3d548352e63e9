import type { Metadata } from 'next';
import Link from 'next/link';
import { listArriving } from '@/app/_server/arriving/list-arriving';
import { productChoices } from '@/app/_server/arriving/product-choices';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { Empty } from '@/app/_ui/empty';
import { Fold } from '@/app/_ui/fold';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { sayAmount } from '@/app/(shop)/jobs/[id]/needs/say-need';
import { CloseOrder } from '@/app/(shop)/on-hand/arriving/_ui/close-order';
import { OrderForm } from '@/app/(shop)/on-hand/arriving/_ui/order-form';
import { readAsked } from '@/app/(shop)/on-hand/arriving/read-asked';
import { sayDate } from '@/shared/calendar/say-date';
import { printMoney } from '@/shared/units/print-money';

export const metadata: Metadata = { title: 'Arriving' };

/** What was ordered and has not come: it counts for needs from the day it is due. */
export default async function ArrivingPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[]>>;
}) {
  const { book, head } = await bookForPage();
  const [orders, products] = await Promise.all([listArriving(book.read), productChoices(book)]);
  const { units: prefer, dateOrder: order, today } = head;
  const asked = readAsked(await searchParams, products, head);
  return (
    <Page title="Arriving" context="ordered, not here yet" back={{ href: '/on-hand', words: 'On hand' }}>
      {orders.length === 0 ? (
        <Empty
          title="Nothing is on order."
          toDo="Write down what you ordered: jobs that need it then see it coming, and it is not bought twice."
        />
      ) : (
        <ul className={styles.arrivals} aria-label="Orders">
          {orders.map((each) => {
            const name = each.product?.name ?? each.words;
            const late = each.dueOn < today;
            return (
              <li key={each.id}>
                <div className={styles.head}>
                  <h2 className={styles.name}>
                    <b className={styles.amount}>
                      {each.product ? sayAmount(each.amount, each.unit, prefer) : `${each.amount} ×`}
                    </b>{' '}
                    {each.product ? <Link href={`/products/${each.product.id}`}>{name}</Link> : name}
                  </h2>
                  <p className={late ? styles.late : styles.state}>
                    {late ? 'Overdue since ' : 'Due '}
                    {sayDate(each.dueOn, { order, today })}
                  </p>
                </div>
                <p className={styles.soft}>
                  {[
                    each.supplier ? `From ${each.supplier}` : '',
                    each.cost ? printMoney(each.cost.minor, each.cost.currency) : '',
                    late ? 'Not counted for any need until it is here or has another day' : '',
                  ]
                    .filter(Boolean)
                    .join(', ')}
                </p>
                <CloseOrder arrivingId={each.id} isWood={!each.product} />
              </li>
            );
          })}
        </ul>
      )}
      <Section>
        <Fold title="Write down an order" open={orders.length === 0 || asked.given}>
          <OrderForm
            key={`${asked.productId} ${asked.words} ${asked.amount}`}
            products={products}
            prefer={prefer}
            today={today}
            order={order}
            asked={asked}
          />
        </Fold>
      </Section>
      <KeyBar>
        <LinkKey variant="ghost" href="/on-hand/buy">
          What to buy
        </LinkKey>
      </KeyBar>
    </Page>
  );
}
