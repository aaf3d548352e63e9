'use client';

import type { ProductChoice } from '@/app/_server/products/product-page';
import { TextField } from '@/app/_ui/field/text-field';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

const SHOWN = 30;

/** The products of the book, narrowed as you type: every word typed must begin a word of the product. */
export function ChooseProduct({
  products,
  prefer,
  query,
  onQuery,
  onChoose,
}: {
  products: readonly ProductChoice[];
  prefer: UnitSystem;
  query: string;
  onQuery: (query: string) => void;
  onChoose: (product: ProductChoice) => void;
}) {
  const found = products.filter((product) => matches(product, query));
  return (
    <>
      <TextField
        label="Which product?"
        hint="Type the beginning of its name or maker."
        value={query}
        onChange={onQuery}
      />
      <p className={styles.note} role="status">
        {found.length === 0 ? 'No product of that name is in the book.' : sayFound(found.length)}
      </p>
      <ul className={styles.choices} aria-label="Products">
        {found.slice(0, SHOWN).map((product) => (
          <li key={product.id}>
            <button type="button" className={styles.choice} onClick={() => onChoose(product)}>
              <b>{product.name}</b>
              <span>
                {[product.maker, printQuantity(amountOf(product.unit, product.packageSize), product.unit, { prefer })]
                  .filter(Boolean)
                  .join(', ')}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

const sayFound = (count: number) =>
  count > SHOWN
    ? `${count} products; the first ${SHOWN} are shown.`
    : count === 1
      ? '1 product.'
      : `${count} products.`;

const plain = (text: string) => text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();

function matches({ name, maker }: ProductChoice, query: string): boolean {
  const words = plain(`${name} ${maker}`).split(/[^\p{L}\p{N}]+/u);
  return plain(query)
    .split(/[^\p{L}\p{N}]+/u)
    .every((part) => words.some((word) => word.startsWith(part)));
}
