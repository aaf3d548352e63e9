import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { photosOf } from '@/app/_server/stock/container-page';
import { type LotPage as LotPageOf, lotPage } from '@/app/_server/stock/lot-page';
import { lotsOfOtherPart } from '@/app/_server/stock/lots-of-other-part';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { HoldAct } from '@/app/(shop)/_parts/acts/hold-act';
import { InspectAct } from '@/app/(shop)/_parts/acts/inspect-act';
import { PhotoAct } from '@/app/(shop)/_parts/acts/photo-act';
import { suggestInspection } from '@/app/(shop)/_parts/acts/suggest-inspection';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { readId } from '@/app/(shop)/_parts/read-id';
import { containerRow } from '@/app/(shop)/_parts/stock/container-row';
import { ContainerRows } from '@/app/(shop)/_parts/stock/container-rows';
import { InspectionList } from '@/app/(shop)/_parts/stock/inspection-list';
import { Photos } from '@/app/(shop)/_parts/stock/photos';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { DatesAct } from '@/app/(shop)/lots/_ui/dates-act';
import { HeldList } from '@/app/(shop)/trace/_ui/held-list';
import { type HeldThing, heldPresses } from '@/app/(shop)/trace/held-presses';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import type { LabelDate } from '@/shared/shelf-life/types/label-date';
import { HOLD_STATES, type HoldState } from '@/shared/shelf-life/types/lot-facts';
import { traceKey } from '@/shared/trace/trace-graph';

type Props = { params: Promise<{ id: string }> };

const HOLDS: Record<HoldState, string> = {
  free: 'Free',
  'on-hold': 'On hold',
  quarantine: 'In quarantine',
  recalled: 'Recalled',
};
const MOST_LABELS = 100;

const lotOf = cache(async (params: Props['params']) => {
  const lotId = readId((await params).id);
  if (lotId === undefined) return undefined;
  const { book } = await bookForPage();
  return lotPage(book, lotId);
});

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const lot = await lotOf(params);
  return { title: lot ? `Lot ${lot.code ?? 'of'} ${lot.product.name}` : 'Lot' };
}

export default async function LotPage({ params }: Props) {
  const lot = await lotOf(params);
  if (!lot) notFound();
  const { book, head } = await bookForPage();
  const { today, units: prefer, dateOrder: order } = head;
  const photos = await photosOf(book, lot.lotId);
  const dates = [lot.dates.madeOn, lot.dates.bestBefore, lot.dates.useBy];
  const here = lot.containers.filter((line) => line.left > 0);
  const presses = heldPresses(lot.held, thingsOf(lot));
  const typed = (date: LabelDate | undefined) => (date ? sayDate(date.date, { order, precision: date.precision }) : '');

  return (
    <Page
      title={
        lot.code ? (
          <>
            Lot <Code>{lot.code}</Code>
          </>
        ) : (
          'A lot without a code'
        )
      }
      context={<Link href={`/products/${lot.product.id}`}>{lot.product.name}</Link>}
      back={{ href: '/on-hand', words: 'On hand' }}
    >
      <div className={styles.columns}>
        <div>
          <Section title="What its label says">
            <Facts
              facts={[
                { term: 'Made on', value: sayLabelDate(lot.dates.madeOn, order) },
                { term: 'Best before', value: sayLabelDate(lot.dates.bestBefore, order) },
                { term: 'Use by', value: sayLabelDate(lot.dates.useBy, order) },
                { term: 'Maker', value: lot.product.maker || 'Not in the book' },
                { term: 'The whole lot', value: `${HOLDS[lot.hold]}${lot.heldBecause ? `: ${lot.heldBecause}` : ''}` },
              ]}
            />
          </Section>
          {presses.length > 0 ? (
            <Section title="On hold by a trace">
              {presses.map((press) => (
                <HeldList
                  key={press.entryId}
                  press={press}
                  count={lot.held.find(({ entryId }) => entryId === press.entryId)?.inAll ?? press.things.length}
                  of="lot"
                />
              ))}
            </Section>
          ) : null}
          <Photos photos={photos} of={`lot ${lot.code ?? ''}`} />
        </div>
        <div>
          <Section title="Write about it">
            <DatesAct
              key={JSON.stringify(lot.dates)}
              lotId={lot.lotId}
              dates={{
                madeOn: typed(lot.dates.madeOn),
                bestBefore: typed(lot.dates.bestBefore),
                useBy: typed(lot.dates.useBy),
              }}
              unconfirmed={dates.some((date) => date && !date.confirmed)}
              today={today}
              order={order}
            />
            <HoldAct
              key={lot.hold}
              stockId={lot.lotId}
              hold={lot.hold}
              thing="the whole lot"
              states={HOLD_STATES}
              releases="Its containers that a trace put on hold are free again with it. One held for a reason of its own stays."
            />
            <InspectAct
              lotId={lot.lotId}
              others={await lotsOfOtherPart(book, lot.product.id)}
              today={today}
              order={order}
              suggested={suggestInspection(lot.policy, today)}
            />
            <PhotoAct stockId={lot.lotId} />
            <div className={styles.keysRow}>
              <LinkKey variant="ghost" href={`/trace/lot/${lot.lotId}`}>
                Trace it
              </LinkKey>
            </div>
            {here.length > 0 ? (
              <div className={styles.keysRow}>
                <LinkKey
                  variant="ghost"
                  href={`/labels?codes=${here
                    .slice(0, MOST_LABELS)
                    .map((line) => line.label)
                    .join(',')}`}
                >
                  {here.length === 1
                    ? 'Print its label'
                    : `Print the labels of ${Math.min(here.length, MOST_LABELS)} containers`}
                </LinkKey>
              </div>
            ) : null}
          </Section>
        </div>
      </div>
      <Section title="Its containers" aside={`${here.length} on hand of ${lot.containers.length}`}>
        {lot.containers.length === 0 ? (
          <p className={styles.soft}>No container of it was ever booked in.</p>
        ) : (
          <ContainerRows
            rows={lot.containers.map((line) => containerRow(line, { today, order, prefer }))}
            today={today}
            label="Containers of the lot"
          />
        )}
      </Section>
      <Section title="Inspections and test pours">
        <InspectionList lines={lot.inspections} today={today} order={order} prefer={prefer} />
      </Section>
      <HistorySection of={{ lotId: lot.lotId }} />
    </Page>
  );
}

/** The lot and its containers, as a list of what is held names them. */
function thingsOf({ lotId, code, product, containers }: LotPageOf): HeldThing[] {
  const lot = { key: traceKey('lot', lotId), kind: 'lot' as const, id: lotId, href: `/trace/lot/${lotId}` };
  return [
    { ...lot, label: null, code, title: product.name },
    ...containers.map(({ stockId, label }) => ({
      key: traceKey('container', stockId),
      kind: 'container' as const,
      id: stockId,
      href: `/containers/${label}`,
      label,
      code,
      title: '',
    })),
  ];
}

function sayLabelDate(date: LabelDate | undefined, order: DateOrder): string {
  if (!date) return 'Not printed, or not known';
  const only = date.precision === 'day' ? '' : `, the ${date.precision} only`;
  return `${sayDate(date.date, { order, precision: date.precision })}${only}${date.confirmed ? '' : ', not confirmed yet'}`;
}
