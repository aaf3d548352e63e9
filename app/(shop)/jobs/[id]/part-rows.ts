import type { PartLine } from '@/app/_server/jobs/read-parts';
import { SHAPES } from '@/app/(shop)/jobs/[id]/_ui/part-shapes';
import type { PartRow } from '@/app/(shop)/jobs/[id]/_ui/parts';
import type { Nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import { printLengthExact } from '@/shared/units/print-length-exact';
import type { UnitSystem } from '@/shared/units/unit-system';

const KIND_WORDS = { top: 'top', base: 'base part', other: 'other' } as const;

/** Parts as they are shown and typed, in the book's units, with what each needs in words. */
export function partRows(
  parts: readonly PartLine[],
  prefer: UnitSystem,
  needs: ReadonlyMap<number, readonly string[]> = new Map(),
): PartRow[] {
  const typed = (length: Nanometres | null) => (length === null ? '' : printLengthExact(length, prefer));
  return parts.map((part) => ({
    id: part.id,
    typed: {
      kind: part.kind,
      name: part.name,
      count: String(part.count),
      shape: part.shape || 'rectangle',
      lengthNm: typed(part.length),
      widthNm: typed(part.width),
      thicknessNm: typed(part.thickness),
      note: part.note,
    },
    says: sayPart(part, prefer),
    needs: needs.get(part.id) ?? [],
  }));
}

/** `2 ×, top, oval, 1,800 × 900 × 40 mm`: whatever of it is known. */
export function sayPart({ kind, count, shape, length, width, thickness, note }: PartLine, prefer: UnitSystem): string {
  const lengths = (shape === 'round' ? [length, thickness] : [length, width, thickness]).flatMap((each) => each ?? []);
  const size = lengths.map((each) => printLength(each, { prefer, denominator: 16 })).join(' × ');
  const word = SHAPES.find(({ value }) => value === shape)?.label.toLowerCase();
  return [
    count === 1 ? '' : `${count} of it`,
    KIND_WORDS[kind],
    word,
    size && (shape === 'round' ? `across ${size}` : size),
    note,
  ]
    .filter(Boolean)
    .join(', ');
}
