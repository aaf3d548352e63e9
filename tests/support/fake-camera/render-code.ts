import bwipjs from 'bwip-js/node';
import sharp from 'sharp';
import type { Picture } from './warp';

/** Pixels a module in a rendered code; scale a laid label by `wanted / RENDER_SCALE`. */
export const RENDER_SCALE = 4;

const LINEAR = /128|39|ean|upc|itf|databar/;

/** A code as printed, with its quiet zone, on white. `kind` and `text` are the renderer's own, such as `gs1-128`, `(10)AB`. */
export async function renderCode(kind: string, text: string): Promise<Picture> {
  const png = await bwipjs.toBuffer({
    bcid: kind,
    text,
    scale: RENDER_SCALE,
    paddingwidth: 12,
    paddingheight: 12,
    backgroundcolor: 'FFFFFF',
    ...(LINEAR.test(kind) ? { height: 14 } : {}),
  });
  const { data, info } = await sharp(png).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, data: new Uint8ClampedArray(data) };
}
