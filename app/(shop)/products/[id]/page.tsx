import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { cache } from 'react';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listSystems, productPage } from '@/app/_server/products/product-page';
import { Code } from '@/app/_ui/code';
import { Empty } from '@/app/_ui/empty';
import { Facts } from '@/app/_ui/facts';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { HistorySection } from '@/app/(shop)/_parts/history-section';
import { typedProduct } from '@/app/(shop)/_parts/product/typed-product';
import { readId } from '@/app/(shop)/_parts/read-id';
import { containerRow } from '@/app/(shop)/_parts/stock/container-row';
import { ContainerRows } from '@/app/(shop)/_parts/stock/container-rows';
import { Hazards } from '@/app/(shop)/_parts/stock/hazards';
import styles from '@/app/(shop)/_parts/stock/stock.module.css';
import { ChangeProductAct } from '@/app/(shop)/products/_ui/change-product-act';
import { FinishSheetSection } from '@/app/(shop)/products/_ui/finish-sheet-section';
import list from '@/app/(shop)/products/_ui/products.module.css';
import { keepingFacts, productFacts } from '@/app/(shop)/products/product-facts';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';

type Props = { params: Promise<{ id: string }> };

/** As many containers as the page of a product reads. */
const MOST = 200;

const productOf = cache(async (params: Props['params']) => {
  const productId = readId((await params).id);
  if (productId === undefined) return undefined;
  const { book } = await bookForPage();
  return productPage(book, productId);
});

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: (await productOf(params))?.fields.name ?? 'Product' };
}

export default async function ProductPage({ params }: Props) {
  const page = await productOf(params);
  if (!page) notFound();
  const { book, head } = await bookForPage();
  const { today, units: prefer, dateOrder: order } = head;
  const { fields, productId, containers } = page;
  const systems = await listSystems(book);
  const left = containers.reduce((sum, line) => sum + line.left, 0);

  return (
    <Page title={fields.name} context={fields.maker} back={{ href: '/products', words: 'Products' }}>
      <div className={styles.columns}>
        <div>
          <Section title="What it is">
            <Facts facts={productFacts(page, head)} />
          </Section>
          <Section title="Mind">
            <Hazards codes={fields.hazards} safetySheet={fields.safetySheet} />
          </Section>
        </div>
        <div>
          <Section title="How long it keeps">
            <Facts facts={keepingFacts(page, head)} />
          </Section>
        </div>
      </div>
      <div>
        <ChangeProductAct
          key={JSON.stringify(fields)}
          productId={productId}
          product={typedProduct(fields, prefer)}
          unit={page.lots.length > 0 ? fields.unit : null}
          systems={systems}
          prefer={prefer}
        />
      </div>
      <FinishSheetSection productId={productId} kind={fields.kind} />
      <Section
        title="On hand"
        aside={
          containers.length > 0
            ? `${printQuantity(amountOf(fields.unit, left), fields.unit, { prefer, rounding: 'down' })} in ${containers.length}${containers.length === MOST ? ' or more' : ''}`
            : undefined
        }
      >
        {containers.length === 0 ? (
          <Empty title="Nothing of it is left." toDo="Scan it as it arrives; the book knows it by its code.">
            <LinkKey variant="ghost" href="/arrive">
              Book some in
            </LinkKey>
          </Empty>
        ) : (
          <ContainerRows
            rows={containers.map((line) => containerRow(line, { today, order, prefer }))}
            today={today}
            label={fields.name}
          />
        )}
        {containers.length === MOST ? (
          <p>
            <Link href={`/on-hand?q=${encodeURIComponent(fields.name)}`}>See all of it on hand</Link>
          </p>
        ) : null}
      </Section>
      <Section title="Its lots">
        {page.lots.length === 0 ? (
          <p className={list.soft}>None was booked in yet.</p>
        ) : (
          <ul className={list.list} aria-label="Lots">
            {page.lots.map((lot) => (
              <li key={lot.lotId}>
                <Link href={`/lots/${lot.lotId}`}>{lot.code ? <Code>{lot.code}</Code> : 'No lot printed'}</Link>
                <span className={list.number}>
                  {lot.containers} {lot.containers === 1 ? 'container' : 'containers'} booked in
                </span>
              </li>
            ))}
          </ul>
        )}
      </Section>
      <Section title="Codes that mean it">
        {page.codes.length === 0 ? (
          <p className={list.soft}>None yet. Scan its label under Arrive and teach the code.</p>
        ) : (
          <ul className={list.list} aria-label="Codes">
            {page.codes.map((code) => (
              <li key={code.value}>
                <Code>{code.value}</Code>
                <span className={list.number}>
                  {code.packageSize === null
                    ? ''
                    : printQuantity(amountOf(fields.unit, code.packageSize), fields.unit, { prefer })}
                </span>
              </li>
            ))}
          </ul>
        )}
      </Section>
      <HistorySection of={{ productId }} />
    </Page>
  );
}
