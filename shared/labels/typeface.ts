/** The three cuts on a label: plain lines, the title, and the code. */
export type Face = 'text' | 'strong' | 'mono';

/**
 * Measures of the printed typeface, handed to the layout by whoever can read the font files. The layout itself stays pure.
 */
export type Typeface = {
  /** Width of the text set in one line at size 1, kerning included; multiply by the size in millimetres. */
  readonly width: (text: string, face: Face) => number;
  /** Whether the typeface can draw this one character. */
  readonly draws: (character: string) => boolean;
};

/** Highest ink above the baseline at size 1, accents on capitals included. */
export const ASCENT = 0.93;
/** Deepest ink below the baseline at size 1. */
export const DESCENT = 0.27;
/** Height of a capital at size 1. */
export const CAP_HEIGHT = 0.668;
/** Height of a lower-case x at size 1. */
export const X_HEIGHT = 0.496;
