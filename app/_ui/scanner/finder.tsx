import type { ReactNode, RefObject } from 'react';
import styles from './scanner.module.css';
import type { CameraState } from './use-camera';

/** The camera's picture with corner brackets and a line to lay a bar code along. */
export function Finder({
  video,
  state,
  hint,
  children,
}: {
  video: RefObject<HTMLVideoElement | null>;
  state: CameraState;
  hint: string | undefined;
  children: ReactNode;
}) {
  const isLive = state.kind === 'live';
  return (
    <div className={styles.finder} data-live={isLive || undefined}>
      {/* The stream has no sound, so there is nothing to caption. */}
      <video ref={video} className={styles.video} playsInline muted autoPlay aria-label="What the camera sees" />
      {isLive ? (
        <svg className={styles.guide} viewBox="0 0 300 200" preserveAspectRatio="xMidYMid meet" aria-hidden="true">
          <path d="M10 40V10H40M260 10H290V40M290 160V190H260M40 190H10V160" vectorEffect="non-scaling-stroke" />
          <path d="M24 100H276" vectorEffect="non-scaling-stroke" data-line />
        </svg>
      ) : null}
      {state.kind === 'opening' ? (
        <p className={styles.hint} role="status">
          Opening the camera. If the browser asks, allow it.
        </p>
      ) : null}
      {hint ? (
        <p className={styles.hint} role="status">
          {hint}
        </p>
      ) : null}
      {children}
    </div>
  );
}
