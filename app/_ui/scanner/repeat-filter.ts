/** When each code was last in view, in milliseconds of any one steady clock. */
export type InView = ReadonlyMap<string, number>;

export const NOTHING_IN_VIEW: InView = new Map();

/** Out of view this long and the same code counts as new. */
export const GONE_MS = 1500;

/** Out of view this long while another code is in view and the same code counts as new. */
export const SWAPPED_MS = 600;

/**
 * Whether a code seen now is a new reading or the same label still in front of the camera.
 *
 * It is new when it has not been in view for {@link GONE_MS}, or when another code has been in view since and it was away
 * for {@link SWAPPED_MS}. The shorter wait lets two tins be read in turn; two labels on one tin, seen in every other frame,
 * still count once each. The bound itself counts as away. Every sighting, new or not, renews the wait.
 *
 * @example seeCode('A', 0, NOTHING_IN_VIEW).isNew // true; the same again at 400 ms is not, at 2,000 ms it is
 */
export function seeCode(
  name: string,
  now: number,
  inView: InView,
): { readonly isNew: boolean; readonly inView: InView } {
  const last = inView.get(name);
  const otherSince = [...inView].some(([other, at]) => other !== name && last !== undefined && at > last);
  const isNew = last === undefined || now - last >= (otherSince ? SWAPPED_MS : GONE_MS);
  const kept = [...inView].filter(([, at]) => now - at < GONE_MS);
  return { isNew, inView: new Map([...kept, [name, now]]) };
}
