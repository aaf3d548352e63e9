import { aimSymbology } from '@/shared/scan-codes/aim-symbology';

/**
 * Separates the AIM symbology identifier that a scanner may send before the data from the data itself.
 * Anything that is not an assigned identifier, or has nothing behind it, stays in the text, so nothing read is ever lost.
 *
 * @example splitAimPrefix(']d20109501101530003') // { symbology: ']d2', text: '0109501101530003' }
 */
export function splitAimPrefix(raw: string): { readonly text: string; readonly symbology?: string } {
  const prefix = raw.slice(0, 3);
  if (raw.length <= 3 || !aimSymbology(prefix)) return { text: raw };
  return { symbology: prefix, text: raw.slice(3) };
}
