import type { PhotoLine } from '@/app/_server/stock/container-page';
import { PhotoStrip } from '@/app/_ui/photo-strip';
import { Section } from '@/app/_ui/section';

/** The photos of a thing under their title; nothing where there are none. */
export function Photos({ photos, of }: { photos: readonly PhotoLine[]; of: string }) {
  if (photos.length === 0) return null;
  return (
    <Section title="Photos">
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
    </Section>
  );
}
