import styles from '@/app/_ui/photo-strip.module.css';

export interface Photo {
  id: string;
  /** The small picture, and the whole one that opens when it is pressed. */
  src: string;
  href: string;
  /** What is seen: "Label of the jug", "Break across the middle, upper face". */
  alt: string;
  width: number;
  height: number;
  caption?: string;
}

/** Photographs in a row that scrolls sideways. Each opens whole. */
export function PhotoStrip({ photos, label = 'Photographs' }: { photos: readonly Photo[]; label?: string }) {
  if (photos.length === 0) return null;
  return (
    <ul className={styles.strip} aria-label={label}>
      {photos.map(({ id, src, href, alt, width, height, caption }) => (
        <li key={id}>
          <a href={href} className={styles.photo} style={{ aspectRatio: `${width} / ${height}` }}>
            {/* biome-ignore lint/performance/noImgElement: the pictures are already cut to size by the store */}
            <img src={src} alt={alt} width={width} height={height} loading="lazy" decoding="async" />
          </a>
          {caption ? <p className={styles.caption}>{caption}</p> : null}
        </li>
      ))}
    </ul>
  );
}
