/** Pixels, four bytes each, rows from the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/**
 * Lays `label` on `onto` through a projective map: its centre at (`x`, `y`), turned by `degrees`, scaled by `scale`, and
 * tilted away so that its right side is smaller by `tilt` (0 is square on; 0.3 is strongly tilted). Bilinear.
 */
export function warp(
  onto: Picture,
  label: Picture,
  place: { x: number; y: number; degrees: number; scale: number; tilt: number },
): Picture {
  const data = new Uint8ClampedArray(onto.data);
  const angle = (place.degrees * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const reach = Math.ceil((Math.hypot(label.width, label.height) / 2) * place.scale * (1 + place.tilt)) + 2;
  const tiltPerPixel = place.tilt / (label.width * place.scale);
  for (let y = Math.max(0, Math.floor(place.y - reach)); y < Math.min(onto.height, place.y + reach); y++) {
    for (let x = Math.max(0, Math.floor(place.x - reach)); x < Math.min(onto.width, place.x + reach); x++) {
      const flatX = cos * (x - place.x) + sin * (y - place.y);
      const flatY = -sin * (x - place.x) + cos * (y - place.y);
      const depth = 1 - tiltPerPixel * flatX;
      if (depth <= 0.05) continue;
      const fromX = flatX / depth / place.scale + label.width / 2 - 0.5;
      const fromY = flatY / depth / place.scale + label.height / 2 - 0.5;
      const left = Math.floor(fromX);
      const top = Math.floor(fromY);
      if (left < 0 || top < 0 || left + 1 >= label.width || top + 1 >= label.height) continue;
      const partX = fromX - left;
      const partY = fromY - top;
      for (let channel = 0; channel < 3; channel++) {
        const at = (top * label.width + left) * 4 + channel;
        const row = label.width * 4;
        const upper = (label.data[at] ?? 0) * (1 - partX) + (label.data[at + 4] ?? 0) * partX;
        const lower = (label.data[at + row] ?? 0) * (1 - partX) + (label.data[at + row + 4] ?? 0) * partX;
        data[(y * onto.width + x) * 4 + channel] = upper * (1 - partY) + lower * partY;
      }
    }
  }
  return { width: onto.width, height: onto.height, data };
}
