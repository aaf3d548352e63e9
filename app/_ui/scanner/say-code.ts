import { parseOwnLabel } from '@/shared/scan-codes/parse-own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { showCode } from './show-code';

const MOST = 40;

/** A code in a sentence: our own label as it is printed, anything else as it was read, cut where it is long. */
export function sayCode(text: string): string {
  const label = parseOwnLabel(text);
  if (label.ok) return printOwnLabel(label.value.code);
  const shown = [...showCode(text)];
  return shown.length > MOST ? `${shown.slice(0, MOST).join('')}…` : shown.join('');
}
