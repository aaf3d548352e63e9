import type { Pixel } from '@/shared/outline/sheet-marks';

/** How the photo lies in its window: screen pixels to one of the photo, and where its corner is. */
export type View = { readonly scale: number; readonly x: number; readonly y: number };
export type Size = { readonly width: number; readonly height: number };

/** As near as one comes: eight pixels of the screen to one of the photo. */
const NEAREST = 8;

/** The whole photo in the middle of the window. */
export function wholeIn(frame: Size, photo: Size): View {
  const scale = Math.min(frame.width / photo.width, frame.height / photo.height);
  return { scale, x: (frame.width - photo.width * scale) / 2, y: (frame.height - photo.height * scale) / 2 };
}

export const onScreen = ({ scale, x, y }: View, pixel: Pixel): Pixel => ({
  x: pixel.x * scale + x,
  y: pixel.y * scale + y,
});

export const onPhoto = ({ scale, x, y }: View, place: Pixel): Pixel => ({
  x: (place.x - x) / scale,
  y: (place.y - y) / scale,
});

/** Nearer or further, what lies under `about` staying where it is; never further than the whole photo. */
export function zoomed(view: View, by: number, about: Pixel, frame: Size, photo: Size): View {
  const least = wholeIn(frame, photo).scale;
  const scale = Math.min(NEAREST, Math.max(least, view.scale * by));
  const ratio = scale / view.scale;
  return heldIn(
    { scale, x: about.x - (about.x - view.x) * ratio, y: about.y - (about.y - view.y) * ratio },
    frame,
    photo,
  );
}

/** Moved so that some of the photo is always at the middle of the window. */
export function heldIn({ scale, x, y }: View, frame: Size, photo: Size): View {
  const hold = (at: number, room: number, size: number) => Math.min(room / 2, Math.max(room / 2 - size * scale, at));
  return { scale, x: hold(x, frame.width, photo.width), y: hold(y, frame.height, photo.height) };
}

/** A place of the photo, never off it. */
export function keptOn(photo: Size, { x, y }: Pixel): Pixel {
  return { x: Math.min(photo.width, Math.max(0, x)), y: Math.min(photo.height, Math.max(0, y)) };
}

/**
 * Which side of a closed line a place is nearest to, by the number of the point it begins at, where it is within `reach`;
 * undefined otherwise. A new point there goes between its two ends.
 */
export function sideAt(points: readonly Pixel[], place: Pixel, reach: number): number | undefined {
  if (points.length < 3) return undefined;
  let least = reach;
  let found: number | undefined;
  for (const [nr, from] of points.entries()) {
    const to = points[(nr + 1) % points.length] ?? from;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const size = dx * dx + dy * dy || 1;
    const part = Math.min(1, Math.max(0, ((place.x - from.x) * dx + (place.y - from.y) * dy) / size));
    const far = Math.hypot(from.x + part * dx - place.x, from.y + part * dy - place.y);
    if (far >= least) continue;
    least = far;
    found = nr;
  }
  return found;
}
