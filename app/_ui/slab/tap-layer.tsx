'use client';

import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { Point } from '@/shared/outline/point';

/** Takes taps on a slab drawing, as whole micrometres of the slab. Lies over the wood and a little beyond its edges. */
export function TapLayer({ outline, onTap }: { outline: Outline; onTap: (point: Point) => void }) {
  const { left, right, bottom, top } = boundsOf(outline.ring);
  const beyond = (right - left) / 20_000;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: whatever can be tapped here can be typed beside the drawing.
    <rect
      x={left / 1000 - beyond}
      y={-top / 1000 - beyond}
      width={(right - left) / 1000 + 2 * beyond}
      height={(top - bottom) / 1000 + 2 * beyond}
      fill="transparent"
      onClick={(tap) => {
        const matrix = tap.currentTarget.getScreenCTM();
        if (!matrix) return;
        const { x, y } = new DOMPoint(tap.clientX, tap.clientY).matrixTransform(matrix.inverse());
        onTap({ x: Math.round(x * 1000), y: Math.round(-y * 1000) + 0 });
      }}
    />
  );
}
