import { useEffect, useState } from 'react';
import type { Size } from '@/app/(shop)/pieces/[label]/photo/_ui/view';
import { LEAST_MEASURED_SIDE } from '@/shared/photos/photo-limits';

export type Picture = { readonly src?: string; readonly size?: Size; readonly wrong?: string };

/** A chosen file as a picture of this page, with its size as it is held upright; or why it cannot be measured by. */
export function usePicture(file: File | undefined): Picture {
  const [picture, setPicture] = useState<Picture>({});
  useEffect(() => {
    setPicture({});
    if (!file) return;
    const src = URL.createObjectURL(file);
    const image = new Image();
    let isGone = false;
    image.onload = () => {
      const size = { width: image.naturalWidth, height: image.naturalHeight };
      const isSmall = Math.min(size.width, size.height) < LEAST_MEASURED_SIDE;
      if (!isGone) setPicture(isSmall ? { wrong: sayTooSmall(size) } : { src, size });
    };
    image.onerror = () => {
      if (!isGone) setPicture({ wrong: CANNOT_OPEN });
    };
    image.src = src;
    return () => {
      isGone = true;
      URL.revokeObjectURL(src);
    };
  }, [file]);
  return picture;
}

const CANNOT_OPEN =
  'This browser cannot open that photo. A HEIC photo is saved as JPEG first: set the phone’s camera to “most compatible”, or choose another.';

function sayTooSmall({ width, height }: Size): string {
  return `That photo is ${width} × ${height} pixels: too small to measure by. The shorter side needs ${LEAST_MEASURED_SIDE}. Choose it as the camera took it, not a copy made smaller.`;
}
