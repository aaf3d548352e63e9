import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { buyList } from '@/app/_server/needs/buy-list';
import { notMoving } from '@/app/_server/promises/not-moving';
import { Code } from '@/app/_ui/code';
import { Empty } from '@/app/_ui/empty';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { thingHref } from '@/app/(shop)/_parts/thing-href';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { sayAmount, sayCost, sayPackages } from '@/app/(shop)/jobs/[id]/needs/say-need';
import { addDays } from '@/shared/calendar/add-days';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import { sayDate } from '@/shared/calendar/say-date';
import { sumOf } from '@/shared/promise/cost-of-need';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { CurrencyCode } from '@/shared/units/currency';
import { printMoney } from '@/shared/units/print-money';

export const metadata: Metadata = { title: 'What to buy' };

/** What is short over all open jobs: how much in the sizes sold, by when, how long it must still be good, and for whom. */
export default async function BuyPage({ searchParams }: { searchParams: Promise<Record<string, string | string[]>> }) {
  const { book, head } = await bookForPage();
  const unsure = (await searchParams).unsure === 'yes';
  const [{ lines, unsureJobs }, resting] = await Promise.all([buyList(book, head, { unsure }), notMoving(book, head)]);
  const { units: prefer, dateOrder: order, today } = head;
  const currency = head.currency as CurrencyCode;
  const date = (day: CalendarDate) => sayDate(day, { order, today });
  const total = sumOf(lines.map((line) => ({ cost: line.price })));
  return (
    <Page title="What to buy" context="for all open jobs" back={{ href: '/on-hand', words: 'On hand' }}>
      {lines.length === 0 ? (
        <Empty
          title="Nothing is short."
          toDo="What the agreed jobs need is on hand, promised or on order. A job’s needs are written on its page."
        />
      ) : (
        <>
          <p className={styles.lead}>
            {lines.length === 1 ? 'One thing is' : `${lines.length} things are`} short. At what was last paid:{' '}
            {sayCost(total, currency)}.
          </p>
          <ul className={styles.buys} aria-label="What to buy">
            {lines.map((line) => (
              <li key={line.key} className={styles.card}>
                <div className={styles.head}>
                  <h2 className={styles.name}>
                    {line.packages ? (
                      <>
                        <b className={styles.amount}>{sayPackages(line.packages, line.unit, prefer)}</b>{' '}
                      </>
                    ) : null}
                    {line.productId === null ? (
                      line.product
                    ) : (
                      <Link href={`/products/${line.productId}`}>{line.product}</Link>
                    )}
                  </h2>
                  <p className={styles.state} data-word={line.by < today ? 'short' : undefined}>
                    {line.by < today ? 'Late: was needed ' : 'Here by '}
                    {date(line.by)}
                  </p>
                </div>
                <p>
                  {line.productId === null ? '' : `${sayAmount(line.short, line.unit, prefer, 'up')} short. `}
                  {line.price === undefined
                    ? 'No price is in the book.'
                    : `${printMoney(line.price, currency)} at what was last paid${line.lastPaidOn ? `, ${date(line.lastPaidOn)}` : ''}.`}
                </p>
                {line.keeps ? null : (
                  <p>
                    Good to <b>{date(line.goodTo)}</b> at the least
                    {line.careDays > 0 ? `; to ${date(addDays(line.goodTo, line.careDays))}, and it is no Care` : ''}.
                  </p>
                )}
                <ul className={styles.wanted} aria-label={`Jobs that want ${line.product}`}>
                  {line.wanted.map((each) => (
                    <li key={`${each.jobId} ${each.on}`}>
                      <Link href={`/jobs/${each.jobId}/needs`}>{each.job}</Link>
                      <span className={styles.soft}>
                        {line.productId === null ? each.short : sayAmount(each.short, line.unit, prefer, 'up')} on{' '}
                        {date(each.on)}
                      </span>
                    </li>
                  ))}
                </ul>
                <div className={styles.acts}>
                  <LinkKey
                    variant="ghost"
                    href={`/on-hand/arriving?${new URLSearchParams({
                      ...(line.productId === null ? { words: line.product } : { product: String(line.productId) }),
                      amount: line.packages ? String(line.packages.amount) : String(line.short),
                      due: line.by,
                    })}`}
                  >
                    It is ordered
                  </LinkKey>
                </div>
              </li>
            ))}
          </ul>
        </>
      )}
      {resting.length > 0 ? (
        <Section title="Kept, and not moving">
          <p className={styles.soft}>
            Before you buy: this is promised to jobs whose day has passed, or nobody took of it for a month.
          </p>
          <ul className={styles.loose} aria-label="Kept, and not moving">
            {resting.map((each) => (
              <li key={`${each.stockId} ${each.jobId}`}>
                <Link href={thingHref(each.label)}>
                  <b>{each.name}</b> <Code>{printOwnLabel(each.label as OwnLabelCode)}</Code>
                </Link>
                <span>
                  {each.unit === 'piece' && each.amount === 1
                    ? 'Promised'
                    : `${sayAmount(each.amount, each.unit, prefer, 'down')} promised`}{' '}
                  to <Link href={`/jobs/${each.jobId}/needs`}>{each.job}</Link> since {date(each.since)}
                  {each.late ? `, needed ${date(each.day)}` : ''}
                </span>
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      <KeyBar>
        <LinkKey variant="ghost" href="/on-hand/arriving">
          What is on order
        </LinkKey>
        {unsureJobs > 0 ? (
          <LinkKey variant="ghost" href={unsure ? '/on-hand/buy' : '/on-hand/buy?unsure=yes'}>
            {unsure ? 'Agreed jobs only' : `With ${unsureJobs} asked or quoted`}
          </LinkKey>
        ) : null}
      </KeyBar>
    </Page>
  );
}
