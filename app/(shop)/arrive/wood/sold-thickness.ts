import { printLengthExact } from '@/shared/units/print-length-exact';
import { quarterThickness } from '@/shared/wood/quarter-thickness';

type Sold = { readonly quarters: string; readonly surfacing: string };

/**
 * The text of a thickness after how it is sold was changed: the published size of the new choice, where the field is
 * empty or still holds that of the choice before; what a person measured stays. `8/4` surfaced two sides is `1 3/4"`.
 */
export function soldThickness(before: Sold & { readonly thickness: string }, after: Sold): string {
  const typed = before.thickness.trim();
  return typed === '' || typed === publishedText(before) ? (publishedText(after) ?? typed) : before.thickness;
}

function publishedText({ quarters, surfacing }: Sold): string | undefined {
  const size = quarterThickness(Number(quarters));
  if (!size) return undefined;
  const isSurfaced = surfacing === 'S2S' || surfacing === 'S4S';
  return isSurfaced ? printLengthExact(size.surfacedTwo, 'imperial') : `${quarters}/4`;
}

/** The quarters that a typed thickness names: `8/4` is 8; undefined for any other text. */
export function quartersTyped(thickness: string): string | undefined {
  const [, quarters] = /^\s*(\d{1,2})\s*\/\s*4\s*$/.exec(thickness) ?? [];
  return quarters !== undefined && quarterThickness(Number(quarters)) ? quarters : undefined;
}
