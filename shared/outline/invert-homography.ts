import type { Homography } from '@/shared/outline/homography';

/**
 * The way back: millimetres on the slab's face to pixels of the photo. A map of a plane through a lens has one, the
 * inverse of its matrix, here by its cofactors. `straightenPixel(invertHomography(map), place)` is the pixel of a place in
 * front of the camera.
 */
export function invertHomography(map: Homography): Homography {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, i = 1] = map;
  const back = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  const size = a * (back[0] ?? 0) + b * (back[3] ?? 0) + c * (back[6] ?? 0);
  return back.map((value) => value / size);
}
