import type { ScanMeaning } from '@/app/_server/codes/look-up-scan';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { sayMalformed } from '@/shared/scan-codes/say-malformed';

type NotPullable = Exclude<ScanMeaning, { kind: 'container' | 'piece' | 'product' }>;

/** What a scan is that cannot be pulled, and what to do; `teach` when the book could be taught the code. */
export function sayNotPullable(meaning: NotPullable): { what: string; todo: string; teach: boolean } {
  switch (meaning.kind) {
    case 'place':
      return {
        what: `That is a place: ${meaning.name}.`,
        todo: 'Scan the tin or the piece itself.',
        teach: false,
      };
    case 'unknown-product':
      return {
        what: 'The book does not know this product.',
        todo: 'Scan our own label if the tin has one. If it is new in the shop, take it in under Arrive first.',
        teach: true,
      };
    case 'label-without-product':
      return {
        what: 'This label gives a lot or a date, but not the product.',
        todo: 'Scan the product’s bar code, or our own label.',
        teach: false,
      };
    case 'not-in-book':
      return {
        what: `${printOwnLabel(meaning.label as OwnLabelCode)} is a label of ours that this book never gave.`,
        todo: 'It may belong to another book. Scan the product’s bar code instead, or look for the thing under On hand.',
        teach: false,
      };
    case 'unknown': {
      if (meaning.malformed) return { ...sayMalformed(meaning.malformed), teach: false };
      return {
        what: 'The book does not know this code.',
        todo: 'Scan our own label if there is one, or say once what this code means.',
        teach: true,
      };
    }
  }
}
