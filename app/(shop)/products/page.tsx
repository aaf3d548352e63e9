import type { Metadata } from 'next';
import Link from 'next/link';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { listProducts, type ProductChoice } from '@/app/_server/products/product-page';
import { Empty } from '@/app/_ui/empty';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import styles from '@/app/(shop)/products/_ui/products.module.css';
import { sayLife } from '@/shared/calendar/say-life';
import { isMaterialKind, MATERIAL_KIND_IDS, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';

export const metadata: Metadata = { title: 'Products' };

export default async function ProductsPage() {
  const { book, head } = await bookForPage();
  const products = await listProducts(book);
  const kinds = [...MATERIAL_KIND_IDS, undefined].flatMap((kind) => {
    const some = products.filter((product) => (isMaterialKind(product.kind) ? product.kind : undefined) === kind);
    return some.length > 0 ? [{ name: kind ? MATERIAL_KINDS[kind] : 'Of another kind', some }] : [];
  });
  return (
    <Page
      title="Products"
      context={products.length > 0 ? `${products.length} in the book` : undefined}
      back={{ href: '/on-hand', words: 'On hand' }}
    >
      {products.length === 0 ? (
        <Empty
          title="The book knows no product yet."
          toDo="Scan a tin as it arrives and teach the book what it is, once. After that its code is enough."
        >
          <LinkKey href="/arrive">Book something in</LinkKey>
        </Empty>
      ) : null}
      {products.some(({ policy }) => policy.system) ? (
        <p>
          <Link href="/resin">Resin systems and their data sheets</Link>
        </p>
      ) : null}
      {kinds.map(({ name, some }) => (
        <section key={name}>
          <h2 className={styles.kind}>{name}</h2>
          <ul className={styles.list} aria-label={name}>
            {some.map((product) => (
              <li key={product.id}>
                <span>
                  <Link href={`/products/${product.id}`}>{product.name}</Link>
                  <span className={styles.soft}>{[product.maker, sayKeeps(product)].filter(Boolean).join(' · ')}</span>
                </span>
                <span className={styles.number}>
                  {printQuantity(amountOf(product.unit, product.packageSize), product.unit, { prefer: head.units })}
                </span>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </Page>
  );
}

function sayKeeps({ policy }: ProductChoice): string {
  if (policy.kind === 'keeps') return 'keeps';
  const parts = [
    policy.statedLife ? `${sayLife(policy.statedLife)} sealed` : '',
    policy.openedLife ? `${sayLife(policy.openedLife)} opened` : '',
  ].filter(Boolean);
  return parts.length > 0 ? parts.join(', ') : 'by its own date';
}
