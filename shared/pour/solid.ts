import { err, ok, type Result } from '@/shared/result/result';
import type { Nanometres } from '@/shared/units/nanometres';
import { type Microlitres, microlitres } from '@/shared/units/stock-unit';

/** A void with a formula of its own. Every length is inside the form, in nanometres. */
export type Solid =
  | { readonly shape: 'box'; readonly length: Nanometres; readonly width: Nanometres; readonly depth: Nanometres }
  /** A round tray: its diameter. */
  | { readonly shape: 'cylinder'; readonly diameter: Nanometres; readonly depth: Nanometres }
  | { readonly shape: 'ellipse'; readonly length: Nanometres; readonly width: Nanometres; readonly depth: Nanometres }
  /** A round tray with sloping sides. */
  | {
      readonly shape: 'cone-frustum';
      readonly topDiameter: Nanometres;
      readonly bottomDiameter: Nanometres;
      readonly depth: Nanometres;
    }
  /** A tray with four sloping sides, two parallel faces: a prismoid. */
  | {
      readonly shape: 'sloped-tray';
      readonly topLength: Nanometres;
      readonly topWidth: Nanometres;
      readonly bottomLength: Nanometres;
      readonly bottomWidth: Nanometres;
      readonly depth: Nanometres;
    }
  /** A groove that comes to a point at the bottom: width at the top. */
  | { readonly shape: 'v-groove'; readonly length: Nanometres; readonly width: Nanometres; readonly depth: Nanometres };

export type SolidError = { readonly code: 'not-above-zero'; readonly measure: string };

/**
 * The volume of a solid, to the nearest microlitre (a cubic millimetre). A box is l·w·d, a cylinder and an ellipse π/4 of
 * it, a cone frustum π·d·(D² + D·d + d²)/12, a sloped tray h/6·(top + 4·middle + bottom), a V groove half its box
 * (prismoidal formula and solids of elementary geometry: CRC Standard Mathematical Tables, mensuration formulas; from
 * memory). Fails with `not-above-zero` and the measure, but for one face of a frustum or tray, which may come to a point
 * or a line. A box of 1000 × 100 × 40 mm holds 4 000 000 µL, four litres.
 */
export function solidVolume(solid: Solid): Result<Microlitres, SolidError> {
  const { shape, ...measures } = solid;
  const mayBeZero = shape === 'cone-frustum' || shape === 'sloped-tray';
  for (const [measure, value] of Object.entries(measures)) {
    const isFace = mayBeZero && measure.startsWith('bottom');
    if (!(value > 0 || (isFace && value === 0))) return err({ code: 'not-above-zero', measure });
  }
  return ok(microlitres(Math.round(cubicMillimetres(solid))));
}

const mm = (length: Nanometres) => length / 1e6;

function cubicMillimetres(solid: Solid): number {
  switch (solid.shape) {
    case 'box':
      return mm(solid.length) * mm(solid.width) * mm(solid.depth);
    case 'v-groove':
      return (mm(solid.length) * mm(solid.width) * mm(solid.depth)) / 2;
    case 'cylinder':
      return (Math.PI / 4) * mm(solid.diameter) ** 2 * mm(solid.depth);
    case 'ellipse':
      return (Math.PI / 4) * mm(solid.length) * mm(solid.width) * mm(solid.depth);
    case 'cone-frustum': {
      const [top, bottom] = [mm(solid.topDiameter), mm(solid.bottomDiameter)];
      return (Math.PI / 12) * mm(solid.depth) * (top * top + top * bottom + bottom * bottom);
    }
    case 'sloped-tray': {
      const top = mm(solid.topLength) * mm(solid.topWidth);
      const bottom = mm(solid.bottomLength) * mm(solid.bottomWidth);
      const middle =
        ((mm(solid.topLength) + mm(solid.bottomLength)) / 2) * ((mm(solid.topWidth) + mm(solid.bottomWidth)) / 2);
      return (mm(solid.depth) / 6) * (top + 4 * middle + bottom);
    }
  }
}
