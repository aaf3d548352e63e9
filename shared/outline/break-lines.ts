import type { Defect } from '@/shared/outline/defect';
import type { Point } from '@/shared/outline/point';

/**
 * The lines along which a slab falls when its bands are cut: the middle of every break marked on it, from end to end. A
 * crack is kept as a closed line, there along one side and back along the other, so its middle is half way between the
 * points that face each other. What was marked round or with an odd number of points has no middle line and gives none.
 */
export function breakLines(defects: readonly Defect[]): readonly (readonly Point[])[] {
  return defects.flatMap(({ kind, place }) => {
    if (kind !== 'break' || place.shape !== 'polygon' || place.ring.length < 4 || place.ring.length % 2 === 1)
      return [];
    const { ring } = place;
    const line = ring.slice(0, ring.length / 2).map((there, nr) => {
      const back = ring[ring.length - 1 - nr] ?? there;
      return { x: Math.round((there.x + back.x) / 2) + 0, y: Math.round((there.y + back.y) / 2) + 0 };
    });
    return [line];
  });
}
