/**
 * One way of looking at a frame. `fast`, `harder` and `harder-inverted` see all of it; the others look hard at a window in
 * the middle, at the camera's own resolution, after sharpening it, calming it or turning it.
 */
export type FramePass =
  | 'fast'
  | 'harder'
  | 'harder-inverted'
  | 'centre'
  | 'sharpen'
  | 'blur'
  | 'turn-30'
  | 'turn-45'
  | 'turn-60';

/** The window in the middle of the camera's picture, in its own pixels. */
export const CENTRE_WINDOW = { width: 768, height: 480 } as const;

/** The size a whole frame is brought down to (never up) before it is looked at. */
export const WHOLE_FRAME = { width: 1280, height: 720 } as const;

// Chosen by tests/bench/decoders.ts. The first frame reads as much as the best single pass; each later frame starts with a
// fast look, because most frames that hold a code are read by it, and adds one pass that recovers what the others miss.
const CYCLE: readonly (readonly FramePass[])[] = [
  ['fast', 'harder'],
  ['fast', 'blur'],
  ['fast', 'sharpen'],
  ['fast', 'turn-45'],
  ['harder-inverted'],
  ['fast', 'turn-30'],
  ['fast', 'centre'],
  ['fast', 'turn-60'],
];

/** After this many frames every way of looking has had its turn. */
export const FRAMES_IN_CYCLE = CYCLE.length;

/**
 * The passes to run, in order, on the `frame`th frame since the finder opened or last read something (0, 1, 2 …).
 * The passes stop at the first one that reads a code that may be believed.
 *
 * @example passesForFrame(0) // ['fast', 'harder']; passesForFrame(FRAMES_IN_CYCLE) is the same again
 */
export function passesForFrame(frame: number): readonly FramePass[] {
  const turn = Math.max(0, Math.trunc(frame)) % CYCLE.length;
  return CYCLE[turn] ?? ['fast'];
}
