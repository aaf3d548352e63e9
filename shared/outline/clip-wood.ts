import { Clipper64, ClipType, FillRule, PathType, type PolyPath64, PolyTree64 } from 'clipper2-ts';
import { type Outline, type Ring, ringsOf } from '@/shared/outline/outline';
import { twiceRingArea } from '@/shared/outline/ring-area';

/**
 * The wood of an outline that lies inside the rings (`inside`) or outside them (`outside`), as separate outlines. Corners
 * are whole micrometres; where two edges cross between them the new corner is the nearest. No wood gives an empty list.
 */
export function clipWood(wood: Outline, rings: readonly Ring[], keep: 'inside' | 'outside'): Outline[] {
  const clipper = new Clipper64();
  clipper.addPaths(ringsOf(wood).map(pathOf), PathType.Subject);
  clipper.addPaths(rings.map(pathOf), PathType.Clip);
  const tree = new PolyTree64();
  clipper.execute(keep === 'inside' ? ClipType.Intersection : ClipType.Difference, FillRule.NonZero, tree);
  return outlinesBelow(tree);
}

const pathOf = (ring: Ring) => ring.map(({ x, y }) => ({ x, y }));

function outlinesBelow(tree: PolyPath64): Outline[] {
  return childrenOf(tree).flatMap((outer) => {
    const gaps = childrenOf(outer);
    const ring = turned(outer.poly ?? [], 1);
    const here = ring.length > 2 ? [{ ring, holes: gaps.map((gap) => turned(gap.poly ?? [], -1)) }] : [];
    return [...here, ...gaps.flatMap(outlinesBelow)];
  });
}

const childrenOf = (path: PolyPath64) => Array.from({ length: path.count }, (_, nr) => path.child(nr));

function turned(path: readonly { x: number; y: number }[], way: 1 | -1): Ring {
  const ring = path.map(({ x, y }) => ({ x: x + 0, y: y + 0 }));
  return twiceRingArea(ring) > 0n === (way === 1) ? ring : ring.reverse();
}
