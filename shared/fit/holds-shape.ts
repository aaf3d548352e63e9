import { drawnShape, type ShapePart } from '@/shared/fit/drawn-shape';
import { ringAround } from '@/shared/fit/obstacles';
import type { Placement } from '@/shared/fit/search-places';
import type { HalfSizes } from '@/shared/fit/top-shape';
import type { Region } from '@/shared/outline/effective-region';
import { ringsOf, sidesOf } from '@/shared/outline/outline';

type At = { readonly x: number; readonly y: number };

/** How much wood is to spare at the tightest place, beyond the clearance, and where on the wood's edge that is. */
export type Margin = { readonly spare: number; readonly at: At };

/** A shape may be over by as much as this, in micrometres, before it is said not to lie in the wood. */
const HAIRLINE = 1.5;

/**
 * Whether a shape lies in the wood, judged afresh and by other means than the search: its drawn edge is held, point by
 * point and side by side, against every edge of the region. It holds when each point of the drawn edge is in the wood
 * and between the trims, no edge of a gap or keep-out lies within it, and no two sides come closer than the clearance. To
 * 1.5 µm, with the drawn edge within 20 µm of the true curve.
 */
export function holdsShape(region: Region, sizes: HalfSizes, part: ShapePart, placement: Placement): boolean {
  // Wood further off than the clearance and a hair need not be measured.
  return marginOf(region, sizes, part, placement, 2 * HAIRLINE).spare >= -HAIRLINE;
}

/**
 * The margin of a placed shape, or `enough` where it has that much; far below zero when part of it is not in the wood at
 * all.
 */
export function marginOf(
  region: Region,
  sizes: HalfSizes,
  part: ShapePart,
  placement: Placement,
  enough = Infinity,
): Margin {
  const edge = drawnShape(sizes, part, placement);
  const box = boxOf(edge);
  const kept = region.keepOut.map(ringAround);
  const rings = [...ringsOf(region.outline), ...kept];
  const first = edge[0] ?? placement;
  let worst: Margin = { spare: enough, at: first };
  for (const at of edge) {
    const spare = Math.min(at.x - (region.from ?? -Infinity), (region.to ?? Infinity) - at.x);
    if (spare < worst.spare) worst = { spare, at };
  }
  const nowhere = (at: At): Margin => ({ spare: -1e12, at });
  const [outer, ...inner] = rings.map(flat);
  for (const at of edge) {
    const isAstray = !outer || windsRound(outer, at) === 0 || inner.some((ring) => windsRound(ring, at) !== 0);
    // A top as large as the wood has its corners on the edge, to one side of it or the other.
    if (isAstray && !rings.some((ring) => isOn(ring, at))) return nowhere(at);
  }
  const drawn = flat(edge);
  let { spare } = worst;
  let { x, y } = worst.at;
  for (const [a, b] of rings.flatMap(sidesOf)) {
    const reach = spare + region.clearance;
    const [left, right, bottom, top] = [Math.min(a.x, b.x), Math.max(a.x, b.x), Math.min(a.y, b.y), Math.max(a.y, b.y)];
    if (right < box.left - reach || left > box.right + reach || top < box.bottom - reach || bottom > box.top + reach)
      continue;
    const isWithin = windsRound(drawn, a) !== 0;
    let nearest = Infinity;
    for (let nr = 0; nr + 3 < drawn.length; nr += 2) {
      const [px, py] = [drawn[nr] as number, drawn[nr + 1] as number];
      const [qx, qy] = [drawn[nr + 2] as number, drawn[nr + 3] as number];
      const near = Math.min(nearest, spare + region.clearance);
      if ((px < left - near && qx < left - near) || (px > right + near && qx > right + near)) continue;
      if ((py < bottom - near && qy < bottom - near) || (py > top + near && qy > top + near)) continue;
      const over = overlap(a.x, a.y, b.x, b.y, px, py, qx, qy);
      if (over > 0) {
        nearest = Math.min(nearest, -over);
        if (-over - region.clearance < spare) [spare, x, y] = [-over - region.clearance, a.x, a.y];
        continue;
      }
      const [ofA, ofB] = [apart(a.x, a.y, px, py, qx, qy), apart(b.x, b.y, px, py, qx, qy)];
      const [ofP, ofQ] = [apart(px, py, a.x, a.y, b.x, b.y), apart(qx, qy, a.x, a.y, b.x, b.y)];
      const far = Math.min(ofA, ofB, ofP, ofQ);
      nearest = Math.min(nearest, far);
      if (far - region.clearance >= spare) continue;
      spare = far - region.clearance;
      [x, y] = far === ofA ? [a.x, a.y] : far === ofB ? [b.x, b.y] : far === ofP ? [px, py] : [qx, qy];
    }
    // An edge of the wood inside the shape, other than along its very edge, is a hole in the top.
    if (isWithin && nearest > HAIRLINE) return nowhere(a);
  }
  return { spare, at: { x, y } };
}

/** The points one after another, the first again at the end. */
function flat(points: readonly At[]): Float64Array {
  const drawn = new Float64Array(2 * points.length + 2);
  points.forEach(({ x, y }, nr) => {
    drawn[2 * nr] = x;
    drawn[2 * nr + 1] = y;
  });
  drawn[2 * points.length] = drawn[0] ?? 0;
  drawn[2 * points.length + 1] = drawn[1] ?? 0;
  return drawn;
}

function isOn(ring: readonly At[], { x, y }: At): boolean {
  return sidesOf(ring).some(([a, b]) => apart(x, y, a.x, a.y, b.x, b.y) <= HAIRLINE);
}

function boxOf(points: readonly At[]) {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** How often a closed line winds round a point; zero outside. */
function windsRound(drawn: Float64Array, { x, y }: At): number {
  let winds = 0;
  let [ax, ay] = [drawn[0] ?? 0, drawn[1] ?? 0];
  for (let nr = 2; nr < drawn.length; nr += 2) {
    const bx = drawn[nr] as number;
    const by = drawn[nr + 1] as number;
    if (ay <= y !== by <= y) {
      const left = (bx - ax) * (y - ay) - (x - ax) * (by - ay);
      if (ay <= y && left > 0) winds += 1;
      if (ay > y && left < 0) winds -= 1;
    }
    ax = bx;
    ay = by;
  }
  return winds;
}

/** By how little two crossing segments would have to give way; 0 when they do not cross. */
function overlap(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  px: number,
  py: number,
  qx: number,
  qy: number,
): number {
  const toP = (bx - ax) * (py - ay) - (by - ay) * (px - ax);
  const toQ = (bx - ax) * (qy - ay) - (by - ay) * (qx - ax);
  if (toP > 0 === toQ > 0 || toP === 0 || toQ === 0) return 0;
  const toA = (qx - px) * (ay - py) - (qy - py) * (ax - px);
  const toB = (qx - px) * (by - py) - (qy - py) * (bx - px);
  if (toA > 0 === toB > 0 || toA === 0 || toB === 0) return 0;
  const wood = Math.hypot(bx - ax, by - ay);
  const shape = Math.hypot(qx - px, qy - py);
  return Math.min(Math.abs(toP) / wood, Math.abs(toQ) / wood, Math.abs(toA) / shape, Math.abs(toB) / shape);
}

function apart(x: number, y: number, ux: number, uy: number, vx: number, vy: number): number {
  const [dx, dy] = [vx - ux, vy - uy];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((x - ux) * dx + (y - uy) * dy) / square;
  const part = Math.max(0, Math.min(1, along));
  const [offX, offY] = [x - ux - part * dx, y - uy - part * dy];
  return Math.sqrt(offX * offX + offY * offY);
}
