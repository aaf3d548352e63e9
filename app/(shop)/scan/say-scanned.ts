import type { Scanned } from '@/app/_server/codes/what-was-scanned';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printLength } from '@/shared/units/print-length';
import { printQuantity } from '@/shared/units/print-quantity';
import { amountOf } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

/** What a scan turned out to be: a title, and plain sentences under it. */
export function sayScanned(
  scanned: Scanned,
  prefer: UnitSystem,
): { readonly title: string; readonly lines: readonly string[] } {
  switch (scanned.kind) {
    case 'container': {
      const { label, product, maker, lotCode, left, unit, place } = scanned;
      const lot = lotCode ? `lot ${lotCode}` : 'no lot printed';
      return {
        title: product,
        lines: [
          maker ? `${maker}, ${lot}` : `${lot.charAt(0).toUpperCase()}${lot.slice(1)}`,
          left === 0
            ? `${printOwnLabel(label)} is in the book, and nothing is left of it.`
            : `${printOwnLabel(label)} is in the book: ${printQuantity(left, unit, { prefer, rounding: 'down' })} left, ${place ?? 'no place yet'}.`,
        ],
      };
    }
    case 'piece': {
      const { label, species, form, lengthNm, thicknessNm, place, gone } = scanned;
      const size = `${printLength(lengthNm, { prefer })} long, ${printLength(thicknessNm, { prefer })} thick`;
      return {
        title: `${species}, ${form}`,
        lines: [
          size,
          gone
            ? `${printOwnLabel(label)} is in the book, and gone from the shop.`
            : `${printOwnLabel(label)} is in the book: ${place ?? 'no place yet'}.`,
        ],
      };
    }
    case 'place':
      return {
        title: scanned.name,
        lines: [`${printOwnLabel(scanned.label as OwnLabelCode)} is a place of the shop.`],
      };
    case 'product': {
      const { product, says } = scanned;
      const size = printQuantity(amountOf(product.unit, product.packageSize), product.unit, { prefer });
      return {
        title: product.name,
        lines: [
          [product.maker, `${size} a container`].filter(Boolean).join(', '),
          ...(says.lot ? [`The label says lot ${says.lot}.`] : []),
        ],
      };
    }
    case 'unknown-product':
      return { title: 'A product the book does not know', lines: ['It is taught once, and known ever after.'] };
    case 'label-without-product':
      return {
        title: 'A lot label',
        lines: [
          `${scanned.says.lot ? `It says lot ${scanned.says.lot}` : 'It carries dates'}, but not of which product.`,
          'Scan the product’s own code first, then this one.',
        ],
      };
    case 'not-in-book':
      return {
        title: `${printOwnLabel(scanned.label as OwnLabelCode)} is not in this book`,
        lines: ['It is made as our labels are, but this book never gave it. It may come from another book.'],
      };
    case 'unknown':
      return scanned.malformed
        ? { title: 'This code does not read', lines: [] }
        : { title: 'A code the book has not seen', lines: ['Teach it once, and every scan after this one knows it.'] };
  }
}
