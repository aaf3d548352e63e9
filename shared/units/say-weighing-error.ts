import type { WeighingError } from '@/shared/units/used-by-weight';

/** What went wrong with a weighing and what to do. */
export function sayWeighingError(error: WeighingError): string {
  switch (error.code) {
    case 'not-by-weight':
      return 'These are counted, not weighed. Type how many.';
    case 'no-density':
      return 'The book does not know how much a litre of this weighs. Type the amount, or write its density on the product’s page.';
    case 'no-start':
      return 'The book does not know what the empty container weighs, so it needs the weight before as well.';
    case 'lighter-than-empty':
      return 'That is less than the empty container weighs. Check the scale and the unit.';
    case 'heavier-than-before':
      return 'It weighs more than before. Check both weights; if the book is wrong, weigh it on its own page first.';
    case 'nothing-used':
      return 'Nothing was used by these weights.';
  }
}
