import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listPlaces } from '@/app/_server/places/place-page';
import { placeChoices, placeTree } from '@/app/_server/places/place-tree';
import { containerPage } from '@/app/_server/stock/container-page';
import { lotsOfOtherPart } from '@/app/_server/stock/lots-of-other-part';
import { treatmentsOf } from '@/app/_server/treatments/treatments-of';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { ShelfRibbon } from '@/app/_ui/rule/shelf-ribbon';
import { Section } from '@/app/_ui/section';
import { DiscardAct } from '@/app/(shop)/_parts/acts/discard-act';
import { HoldAct } from '@/app/(shop)/_parts/acts/hold-act';
import { InspectAct } from '@/app/(shop)/_parts/acts/inspect-act';
import { MoveAct } from '@/app/(shop)/_parts/acts/move-act';
import { PhotoAct } from '@/app/(shop)/_parts/acts/photo-act';
import { suggestInspection } from '@/app/(shop)/_parts/acts/suggest-inspection';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { labelOfPage, titleOfLabel } from '@/app/(shop)/_parts/label-of-page';
import { containerRow } from '@/app/(shop)/_parts/stock/container-row';
import { ContainerRows } from '@/app/(shop)/_parts/stock/container-rows';
import { Hazards } from '@/app/(shop)/_parts/stock/hazards';
import { InspectionList } from '@/app/(shop)/_parts/stock/inspection-list';
import { Photos } from '@/app/(shop)/_parts/stock/photos';
import { PrintLabel } from '@/app/(shop)/_parts/stock/print-label';
import { PromisedTo } from '@/app/(shop)/_parts/stock/promised-to';
import { ribbonOf } from '@/app/(shop)/_parts/stock/ribbon-of';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { VerdictToday } from '@/app/(shop)/_parts/stock/verdict-today';
import { sizeText } from '@/app/(shop)/arrive/size-text';
import { ConditionAct } from '@/app/(shop)/containers/_ui/condition-act';
import { OpenAct } from '@/app/(shop)/containers/_ui/open-act';
import { TreatAct } from '@/app/(shop)/containers/_ui/treat-act';
import { TreatmentList } from '@/app/(shop)/containers/_ui/treatment-list';
import { WeighAct } from '@/app/(shop)/containers/_ui/weigh-act';
import { containerFacts } from '@/app/(shop)/containers/container-facts';
import { FaultsOfThing } from '@/app/(shop)/faults/_parts/faults-of-thing';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { judge } from '@/shared/shelf-life/judge';
import { HOLD_STATES } from '@/shared/shelf-life/types/lot-facts';
import { printQuantity } from '@/shared/units/print-quantity';

/** Others of the lot that are shown here; its own page has them all. */
const SISTERS = 8;

type Props = { params: Promise<{ label: string }> };

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: await titleOfLabel(params, 'Container') };
}

export default async function ContainerPage({ params }: Props) {
  const label = await labelOfPage(params, 'containers');
  const { book, head } = await bookForPage();
  const page = await containerPage(book, label);
  if (!page) notFound();
  const { line } = page;
  const { today, units: prefer, dateOrder: order } = head;
  const { container, policy } = line.candidate;
  const usedUp = line.left === 0;
  const verdict = judge({ ...line.candidate, purpose: 'client', dayOfUse: today, today });
  const ribbon = ribbonOf(verdict, { today, order }, container.opened?.on);
  const places = placeChoices(placeTree(await listPlaces(book)));
  const left = printQuantity(line.left, line.unit, { prefer, rounding: 'down' });
  const shown = printOwnLabel(line.label);
  const [others, treatments] = await Promise.all([
    lotsOfOtherPart(book, line.productId),
    treatmentsOf(book, { stockId: line.stockId }),
  ]);

  return (
    <Page title={line.product} context={<Code>{shown}</Code>} back={{ href: '/on-hand', words: 'On hand' }}>
      <VerdictToday verdict={verdict} usedUp={usedUp} line={line} today={today} order={order} prefer={prefer} />
      <div className={styles.columns}>
        <div>
          <Section title="This container">
            <Facts facts={containerFacts(page, head)} />
            <PromisedTo stockId={line.stockId} unit={line.unit} left={line.left} />
          </Section>
          <Section title="How long it is good">
            <ShelfRibbon {...ribbon} today={today} order={order} openedOn={container.opened?.on} />
          </Section>
          <Section title="Mind">
            <Hazards codes={page.hazards} safetySheet={page.safetySheet} />
          </Section>
        </div>
        <div>
          <Section title="Write about it">
            <OpenAct label={line.label} opened={container.opened ?? null} today={today} order={order} />
            <WeighAct
              label={line.label}
              unit={line.unit}
              prefer={prefer}
              today={today}
              order={order}
              left={left}
              tare={line.tareMg === null ? '' : sizeText(line.tareMg, 'mg', prefer)}
              densityGramsPerLitre={page.densityGramsPerLitre}
            />
            <MoveAct label={line.label} places={places} here={line.placeLabel} hereWords={line.place} />
            <ConditionAct
              label={line.label}
              seen={container.conditions}
              freezingRuins={policy.freezingRuins}
              about={{ materialKind: line.kind, prefer }}
            />
            <HoldAct
              key={container.hold}
              stockId={line.stockId}
              hold={container.hold}
              thing="this container"
              states={HOLD_STATES}
            />
            {usedUp ? null : (
              <TreatAct
                label={line.label}
                crystals={container.conditions.includes('crystals')}
                today={today}
                order={order}
              />
            )}
            <InspectAct
              lotId={line.lotId}
              containerLabel={line.label}
              others={others}
              today={today}
              order={order}
              suggested={suggestInspection(policy, today)}
            />
            <PhotoAct stockId={line.stockId} />
            {usedUp ? null : (
              <DiscardAct
                label={line.label}
                what={`the ${left} that is left`}
                today={today}
                order={order}
                care="Rags with oil heat themselves: lay them flat or under water. Dispose of resin and finish as the safety data sheet says."
              />
            )}
            <PrintLabel label={line.label}>Print its label</PrintLabel>
          </Section>
          <Photos photos={page.photos} of={shown} />
        </div>
      </div>
      <Section title="Inspections and test pours">
        <InspectionList lines={page.inspections} today={today} order={order} prefer={prefer} />
      </Section>
      {treatments.length > 0 ? (
        <Section title="What was done to it">
          <TreatmentList lines={treatments} today={today} order={order} prefer={prefer} />
        </Section>
      ) : null}
      {page.sisters.length > 0 ? (
        <Section
          title="Others of its lot"
          aside={
            <Link href={`/lots/${line.lotId}`}>{page.sisters.length > SISTERS ? 'All of the lot' : 'The lot'}</Link>
          }
        >
          <ContainerRows
            rows={page.sisters.slice(0, SISTERS).map((each) => containerRow(each, { today, order, prefer }))}
            today={today}
            label="Others of its lot"
          />
        </Section>
      ) : null}
      <FaultsOfThing stockId={line.stockId} label={line.label} kind="container" />
      <HistorySection of={{ stockId: line.stockId }} />
      {usedUp ? null : (
        <div className={styles.pullBar}>
          <KeyBar>
            <LinkKey href={`/pull?label=${line.label}`}>Pull it for a job</LinkKey>
          </KeyBar>
        </div>
      )}
    </Page>
  );
}
