import type { LabelChoice, LabelToPrint } from '@/app/_ui/labels/label-choice';

/** Where the drawing of one label is; `end` for a slab. */
export function previewLink(code: string, choice: LabelChoice, end?: 1 | 2): string {
  const query = new URLSearchParams({ code, format: choice.format, symbology: choice.symbology });
  if (end) query.set('end', String(end));
  return `/api/labels/svg?${query}`;
}

/** Where the labels are, ready to print. */
export function printLink(labels: readonly LabelToPrint[], choice: LabelChoice, start: number): string {
  const query = new URLSearchParams({
    codes: labels.map((label) => label.code).join(','),
    format: choice.format,
    symbology: choice.symbology,
    copies: String(choice.copies),
    start: String(start),
  });
  return `/api/labels/pdf?${query}`;
}
