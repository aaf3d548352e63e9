import type { LabelKind } from '@/shared/labels/label-content';
import { LABEL_FORMAT_IDS, type LabelFormat, type LabelFormatId } from '@/shared/labels/label-formats';
import type { Symbology } from '@/shared/labels/label-symbols';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A label to print, as far as the form needs to know it. */
export type LabelToPrint = { readonly code: string; readonly title: string; readonly kind: LabelKind };

/** What a shop settles once for its printer; kept on the device. */
export type LabelChoice = {
  readonly format: LabelFormatId;
  readonly symbology: Symbology;
  readonly copies: 1 | 2;
  /** A shelf has one front, where a tin has a lid and a side. */
  readonly placeCopies: 1 | 2;
};

/** What a shop begins with: paper of the size that is sold where its units are used. */
export function firstChoice(prefer: UnitSystem): LabelChoice {
  return { format: firstFormat('sheet', prefer), symbology: 'data-matrix', copies: 2, placeCopies: 1 };
}

/** The format a kind of paper begins with. */
export function firstFormat(kind: LabelFormat['kind'], prefer: UnitSystem): LabelFormatId {
  if (kind === 'sheet') return prefer === 'imperial' ? 'letter-3x10' : 'a4-3x8';
  return '62x29';
}

/** The kept choice, or the first one where what was kept is missing, damaged or from another version. */
export function readChoice(kept: string | undefined, prefer: UnitSystem): LabelChoice {
  const value = readJson(kept);
  const first = firstChoice(prefer);
  const copies = (of: 'copies' | 'placeCopies') => {
    const count = value[of];
    return count === 1 || count === 2 ? count : first[of];
  };
  return {
    format: LABEL_FORMAT_IDS.find((id) => id === value.format) ?? first.format,
    symbology: value.symbology === 'qr' || value.symbology === 'data-matrix' ? value.symbology : first.symbology,
    copies: copies('copies'),
    placeCopies: copies('placeCopies'),
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
