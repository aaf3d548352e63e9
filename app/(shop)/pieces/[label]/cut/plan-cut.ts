import type { House } from '@/app/_server/cuts/read-house';
import {
  type BecomesWhat,
  isBelowHouse,
  likelyForm,
  type OldPiece,
  sizeOfPart,
} from '@/app/(shop)/pieces/[label]/cut/become';
import type { NamedLine } from '@/shared/outline/cut-line';
import { type CutFault, cutWood } from '@/shared/outline/cut-wood';
import type { Outline } from '@/shared/outline/outline';
import { placeInside } from '@/shared/outline/place-inside';
import type { Point } from '@/shared/outline/point';
import { shareWood } from '@/shared/outline/share-wood';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

type PlannedRow = { size: string; share: string; as: BecomesWhat; isBelowHouse: boolean };

export type CutPlan = {
  readonly parts: readonly Outline[];
  readonly rows: readonly PlannedRow[];
  /** "0.4 % sawdust" */
  readonly lost: string | undefined;
  /** What is wrong with the lines, in words. */
  readonly fault: string | undefined;
  /** A place in each piece there is before line `nr`. */
  readonly before: (nr: number) => readonly Point[];
};

const FAULTS: Record<CutFault['code'], string> = {
  'line-has-no-direction': 'needs two different points',
  'line-crosses-itself': 'crosses itself',
  'line-misses-the-wood': 'misses the wood',
  'nothing-is-left': 'leaves nothing but sawdust',
};

/** What the lines would make of the slab, in words; nothing while no line is whole. */
export function planCut(
  old: OldPiece & { readonly outline: Outline },
  lines: readonly { readonly line: NamedLine; readonly nr: number }[],
  house: House,
  prefer: UnitSystem,
  chosen: Readonly<Record<number, BecomesWhat>>,
): CutPlan {
  const upTo = (nr: number) => lines.filter((each) => each.nr < nr).map(({ line }) => line);
  const before = (nr: number) => {
    const cut = cutWood(old.outline, upTo(nr));
    return cut.ok ? cut.value.map(placeInside) : [];
  };
  const none = { parts: [], rows: [], lost: undefined, before };
  if (lines.length === 0) return { ...none, fault: undefined };
  const cut = cutWood(
    old.outline,
    lines.map(({ line }) => line),
  );
  if (!cut.ok) {
    const at = lines[cut.error.line]?.nr ?? 0;
    return { ...none, fault: `Cut ${at + 1} ${FAULTS[cut.error.code]}.` };
  }
  const shares = shareWood(
    old.outline,
    cut.value,
    lines.some(({ line }) => line.kerf > 0),
  );
  const whole = shares.parts.reduce((sum, part) => sum + part, shares.sawdust);
  const parts = cut.value;
  const rows = parts.map((part, nr) => {
    const { lengthNm, widthNm } = sizeOfPart(part);
    const percent = ((100 * (shares.parts[nr] ?? 0)) / whole).toFixed(1);
    return {
      size: `${print(lengthNm, prefer)} × ${print(widthNm, prefer)}`,
      share: `${percent} % of the wood`,
      as: chosen[nr] ?? likelyForm(old, old.outline, part, house),
      isBelowHouse: isBelowHouse(part, house),
    };
  });
  const dust = (100 * shares.sawdust) / whole;
  return { parts, rows, lost: dust > 0 ? `${dust.toFixed(1)} % sawdust` : 'no wood is lost', fault: undefined, before };
}

/** A length no finer than a maker cuts: to the tenth of a millimetre or the sixteenth of an inch, without the sign of rounding. */
const print = (nm: number, prefer: UnitSystem) => printLength(nanometres(nm), { prefer }).replace('≈ ', '');

export function sayHouse({ lengthNm, widthNm }: House, prefer: UnitSystem): string {
  return `${print(lengthNm, prefer)} × ${print(widthNm, prefer)}`;
}
