import type { Ring } from '@/shared/outline/outline';

/** The upright box around something, in micrometres. */
export type Bounds = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** The box around a ring, along and across the chalk line. Throws for a ring without points. */
export function boundsOf(ring: Ring): Bounds {
  if (!ring.length) throw new Error('A ring without points has no bounds.');
  const bounds = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity };
  for (const { x, y } of ring) {
    bounds.left = Math.min(bounds.left, x);
    bounds.right = Math.max(bounds.right, x);
    bounds.bottom = Math.min(bounds.bottom, y);
    bounds.top = Math.max(bounds.top, y);
  }
  return bounds;
}
