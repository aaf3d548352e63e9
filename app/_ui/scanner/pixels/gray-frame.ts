/** One brightness value (0 dark to 255 light) for each pixel, rows from the top. */
export interface GrayFrame {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** Four bytes for each pixel (red, green, blue, opacity), rows from the top: what a canvas hands out. */
export interface ColourFrame {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}
