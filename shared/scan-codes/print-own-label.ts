import type { OwnLabelCode } from '@/shared/scan-codes/own-label';

/** A label as printed for people, a dash after its kind letter: `printOwnLabel('C4V9TN3')` is `C-4V9TN3`. */
export function printOwnLabel(code: OwnLabelCode): string {
  return `${code.charAt(0)}-${code.slice(1)}`;
}
