import { ofStations } from '@/shared/pour/river-volume';
import { type Solid, solidVolume } from '@/shared/pour/solid';
import { err, ok, type Result } from '@/shared/result/result';
import { type Nanometres, nanometres } from '@/shared/units/nanometres';
import { type Microlitres, microlitres } from '@/shared/units/stock-unit';

/** One fill of a drawing, or a river drawn as one: its area in square millimetres, and how deep it runs from the top. */
type Fill = { readonly area: number; readonly depth: Nanometres };

/** Where along a river it is how wide: at the top, at the bottom where that is another width, and how deep where it varies. */
type RiverStation = {
  readonly at: Nanometres;
  readonly width: Nanometres;
  readonly bottom?: Nanometres | undefined;
  readonly depth?: Nanometres | undefined;
};

/** What is to be filled with resin, and how its shape is known. */
export type PourVoid =
  /** A form or a hollow with a formula; wood standing in it takes its share at every height. */
  | { readonly from: 'solid'; readonly solid: Solid; readonly wood: Microlitres }
  /** Drawn on slabs: all are level at the top, the shallow ones end higher up. */
  | { readonly from: 'fills'; readonly fills: readonly Fill[] }
  /** Widths across a river at stations along it, level at the top; `depth` where a station has none of its own. */
  | { readonly from: 'stations'; readonly depth: Nanometres; readonly widths: readonly RiverStation[] };

export type VoidError =
  | { readonly code: 'not-above-zero'; readonly field: string }
  | { readonly code: 'wood-fills-the-form' }
  | { readonly code: 'no-fills' }
  | { readonly code: 'too-few-stations' | 'stations-out-of-order'; readonly station: number };

/** A void that was checked: how deep, how much it holds, and how much lies below a height over its lowest point. */
export type MeasuredVoid = {
  readonly depth: Nanometres;
  readonly holds: Microlitres;
  /** Of that, wood that stands in it and is not poured. */
  readonly wood: Microlitres;
  /** To the nearest microlitre; 0 at the bottom and everything without the wood at the top. */
  readonly below: (height: Nanometres) => Microlitres;
};

/**
 * Measures what is to be filled. Solids by their formula at any height (areas are quadratic in the height, so the
 * prismoidal formula is exact), fills by area and depth, rivers by the trapezium at each station and `sectionVolume` along
 * them (`ofStations`). Fails with what to put right. A form of 1000 × 300 × 40 mm with 9 L of wood is to be filled with 3 L,
 * 1.5 L below half its height.
 */
export function measureVoid(given: PourVoid): Result<MeasuredVoid, VoidError> {
  if (given.from === 'solid') return ofSolid(given.solid, given.wood);
  if (given.from === 'fills') return ofFills(given.fills);
  return ofStations(given);
}

function ofSolid(solid: Solid, wood: Microlitres): Result<MeasuredVoid, VoidError> {
  const whole = solidVolume(solid);
  if (!whole.ok) return err({ code: 'not-above-zero', field: whole.error.measure });
  const holds = whole.value;
  if (!(wood >= 0)) return err({ code: 'not-above-zero', field: 'wood' });
  if (wood >= holds) return err({ code: 'wood-fills-the-form' });
  const { depth } = solid;
  const free = (holds - wood) / holds;
  const below = (height: Nanometres) => {
    if (height >= depth) return microlitres(holds - wood);
    const [low, middle, high] = [0, height / 2, height].map((level) => areaAt(solid, level / depth));
    const cubic = (height / 1e6 / 6) * ((low ?? 0) + 4 * (middle ?? 0) + (high ?? 0));
    return microlitres(Math.round(cubic * free));
  };
  return ok({ depth, holds, wood, below });
}

function ofFills(fills: readonly Fill[]): Result<MeasuredVoid, VoidError> {
  if (fills.length === 0) return err({ code: 'no-fills' });
  for (const { area, depth } of fills) {
    if (!(Number.isFinite(area) && area > 0)) return err({ code: 'not-above-zero', field: 'area' });
    if (!(depth > 0)) return err({ code: 'not-above-zero', field: 'depth' });
  }
  const depth = nanometres(Math.max(...fills.map((fill) => fill.depth)));
  const below = (height: Nanometres) =>
    microlitres(
      Math.round(fills.reduce((sum, fill) => sum + fill.area * (Math.max(0, height - (depth - fill.depth)) / 1e6), 0)),
    );
  const holds = below(depth);
  return holds > 0 ? ok({ depth, holds, wood: microlitres(0), below }) : err({ code: 'not-above-zero', field: 'area' });
}

/** Square millimetres of the level at `part` of the depth, 0 at the bottom. */
function areaAt(solid: Solid, part: number): number {
  const mm = (length: Nanometres) => length / 1e6;
  const between = (bottom: Nanometres, top: Nanometres) => mm(bottom) + (mm(top) - mm(bottom)) * part;
  switch (solid.shape) {
    case 'box':
      return mm(solid.length) * mm(solid.width);
    case 'cylinder':
      return (Math.PI / 4) * mm(solid.diameter) ** 2;
    case 'ellipse':
      return (Math.PI / 4) * mm(solid.length) * mm(solid.width);
    case 'cone-frustum':
      return (Math.PI / 4) * between(solid.bottomDiameter, solid.topDiameter) ** 2;
    case 'sloped-tray':
      return between(solid.bottomLength, solid.topLength) * between(solid.bottomWidth, solid.topWidth);
    case 'v-groove':
      return mm(solid.length) * mm(solid.width) * part;
  }
}
