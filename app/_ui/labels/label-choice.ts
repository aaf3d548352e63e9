import type { LabelKind } from '@/shared/labels/label-content';
import { LABEL_FORMAT_IDS, type LabelFormatId } from '@/shared/labels/label-formats';
import type { Symbology } from '@/shared/labels/label-symbols';

/** A label to print, as far as the form needs to know it. */
export type LabelToPrint = { readonly code: string; readonly title: string; readonly kind: LabelKind };

/** What a shop settles once for its printer; kept on the device. */
export type LabelChoice = { readonly format: LabelFormatId; readonly symbology: Symbology; readonly copies: 1 | 2 };

export const FIRST_CHOICE: LabelChoice = { format: 'a4-3x8', symbology: 'data-matrix', copies: 2 };

/** The kept choice, or the first one where what was kept is missing, damaged or from another version. */
export function readChoice(kept: string | undefined): LabelChoice {
  const value = readJson(kept);
  return {
    format: LABEL_FORMAT_IDS.find((id) => id === value.format) ?? FIRST_CHOICE.format,
    symbology: value.symbology === 'qr' || value.symbology === 'data-matrix' ? value.symbology : FIRST_CHOICE.symbology,
    copies: value.copies === 1 || value.copies === 2 ? value.copies : FIRST_CHOICE.copies,
  };
}

/** The first free position by sheet format, after what was printed last from this device. */
export type NextPositions = Partial<Record<LabelFormatId, number>>;

export function readNextPositions(kept: string | undefined): NextPositions {
  const value = readJson(kept);
  return Object.fromEntries(
    LABEL_FORMAT_IDS.flatMap((id) =>
      Number.isInteger(value[id]) && Number(value[id]) >= 1 ? [[id, Number(value[id])]] : [],
    ),
  );
}

function readJson(text: string | undefined): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}
