import { readOutline, ringOf, ringText, writeOutline } from '@/app/_server/shapes/kept-outline';
import type { LineWay, NamedLine } from '@/shared/outline/cut-line';
import type { Outline } from '@/shared/outline/outline';

/**
 * What came of a cut, in whole numbers that add up: `whole` is what there was, `parts` and scrap and `sawdust` together are
 * it. Of a cut in the plane they are twice the area in µm²; of a resaw the thickness in nanometres.
 */
export type KeptCut = {
  readonly lines: readonly NamedLine[];
  readonly shared: 'area' | 'thickness';
  readonly whole: number;
  readonly sawdust: number;
  readonly parts: readonly KeptPart[];
};

/** A piece that was made: its share, and where it lay. It begins `shift` micrometres along; turned over, left is right. */
type KeptPart = {
  readonly stockId: number;
  readonly share: number;
  readonly shift: number;
  readonly turned: boolean;
};

/** Wood that was not kept, where it lay in the parent, and its share. */
export type KeptScrap = { readonly outline: Outline; readonly share: number };

export function writeCut({ lines, ...cut }: KeptCut): string {
  return JSON.stringify({
    ...cut,
    lines: lines.map(({ points, within, ...line }) => ({
      ...line,
      points: ringText(points),
      ...(within ? { within: [within.x, within.y] } : {}),
    })),
  });
}

type KeptText = Omit<KeptCut, 'lines'> & {
  lines: { way: LineWay; kerf: number; points: [number, number][]; within?: [number, number] }[];
};

/** The cut that `writeCut` wrote; undefined of boards taken out of a pack, which are not cut. */
export function readCut(text: string): KeptCut | undefined {
  const kept = JSON.parse(text) as KeptText | [];
  if (Array.isArray(kept)) return undefined;
  return {
    ...kept,
    lines: kept.lines.map(({ points, within, ...line }) => ({
      ...line,
      points: ringOf(points),
      ...(within ? { within: { x: within[0], y: within[1] } } : {}),
    })),
  };
}

export function writeScrap(scrap: readonly KeptScrap[]): string {
  return JSON.stringify(scrap.map(({ outline, share }) => ({ outline: writeOutline(outline), share })));
}

export function readScrap(text: string): KeptScrap[] {
  const kept = JSON.parse(text) as { outline: string; share: number }[];
  return kept.map(({ outline, share }) => ({ outline: readOutline(outline), share }));
}
