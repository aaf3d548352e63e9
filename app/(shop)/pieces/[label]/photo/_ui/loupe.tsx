import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import { onScreen, type Size, type View } from '@/app/(shop)/pieces/[label]/photo/_ui/view';
import type { Pixel } from '@/shared/outline/sheet-marks';

const SIDE = 132;
const NEARER = 3;

/** What lies under the finger, three times as large, in the corner away from it. */
export function Loupe({
  src,
  at,
  view,
  photo,
  frame,
}: {
  src: string;
  at: Pixel;
  view: View;
  photo: Size;
  frame: Size;
}) {
  const scale = Math.min(8, Math.max(view.scale * NEARER, 1));
  const seen = onScreen(view, at);
  const isOver = seen.x < frame.width / 2 && seen.y < frame.height / 2;
  return (
    <div
      className={styles.loupe}
      data-side={isOver ? 'right' : 'left'}
      aria-hidden="true"
      style={{
        width: SIDE,
        height: SIDE,
        backgroundImage: `url("${src}")`,
        backgroundSize: `${photo.width * scale}px ${photo.height * scale}px`,
        backgroundPosition: `${SIDE / 2 - at.x * scale}px ${SIDE / 2 - at.y * scale}px`,
      }}
    />
  );
}
