import type { PhotoLine } from '@/app/_server/stock/container-page';
import { PhotoStrip } from '@/app/_ui/photo-strip';

/** The photos of a thing. */
export function Photos({ photos, of }: { photos: readonly PhotoLine[]; of: string }) {
  return (
    <PhotoStrip
      photos={photos.map((photo, index) => ({
        id: photo.file,
        src: `/photos/${photo.file}`,
        href: `/photos/${photo.file}`,
        alt: photo.caption || `Photo ${photos.length - index} of ${of}`,
        width: photo.width,
        height: photo.height,
        caption: photo.caption || undefined,
      }))}
    />
  );
}
