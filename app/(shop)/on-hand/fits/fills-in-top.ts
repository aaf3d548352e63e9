import { ringAround } from '@/shared/fit/obstacles';
import { clipWood } from '@/shared/outline/clip-wood';
import type { Ring } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';

/** Numbers of the marks to be filled that lie in a top, wholly or in part. */
export function fillsInTop({ defects }: PieceMarks, top: Ring): readonly number[] {
  const edge = whole(top);
  return defects
    .filter(({ decision, place }) => decision === 'fill' && isIn(whole(ringAround(place)), edge))
    .map(({ id }) => id);
}

const isIn = (ring: Ring, top: Ring) => clipWood({ ring, holes: [] }, [top], 'inside').length > 0;

const whole = (ring: Ring): Ring => ring.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) }));
