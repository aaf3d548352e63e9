import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import { onScreen, type View } from '@/app/(shop)/pieces/[label]/photo/_ui/view';
import type { Pixel } from '@/shared/outline/sheet-marks';

/** A line on the photo that is not being tapped now. */
export type StageLine = {
  readonly points: readonly Pixel[];
  readonly look: 'sheet' | 'edge' | 'chalk';
  readonly closed: boolean;
};
/** Words on the photo, over a place. */
export type StageWords = { readonly at: Pixel; readonly words: string };

/** What is drawn over the photo: every line twice, dark under light, to be seen on any wood. */
export function StageLines({
  view,
  lines,
  words,
  points,
  closed,
  chosen,
  wrong,
}: {
  view: View;
  lines: readonly StageLine[];
  words: readonly StageWords[];
  points: readonly Pixel[];
  closed: boolean;
  chosen: number | undefined;
  wrong: number | undefined;
}) {
  const path = (of: readonly Pixel[], isClosed: boolean) =>
    `M${of
      .map((point) => onScreen(view, point))
      .map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`)
      .join('L')}${isClosed ? 'Z' : ''}`;
  const all = [...lines, { points, look: 'edge', closed } as const].filter((line) => line.points.length > 1);
  return (
    <svg className={styles.lines} aria-hidden="true" focusable="false">
      {all.map((line) => {
        const d = path(line.points, line.closed);
        return (
          <g key={`${line.look} ${d}`} data-look={line.look}>
            <path className={styles.under} d={d} />
            <path className={styles.line} d={d} />
          </g>
        );
      })}
      {points.map((point, nr) => {
        const { x, y } = onScreen(view, point);
        const isWrong = nr === wrong;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a point is its place in the round.
          <g key={nr} transform={`translate(${x} ${y})`} data-wrong={isWrong || undefined}>
            {isWrong ? <circle r={20} className={styles.wrong} /> : null}
            <circle r={nr === chosen ? 11 : 7} className={nr === chosen ? styles.chosen : styles.point} />
            {points.length <= 4 || nr === chosen || isWrong ? (
              <text y={-16} className={styles.number}>
                {nr + 1}
              </text>
            ) : null}
          </g>
        );
      })}
      {words.map(({ at, words: said }) => {
        const { x, y } = onScreen(view, at);
        return (
          <text key={said} x={x} y={y - 12} className={styles.number}>
            {said}
          </text>
        );
      })}
    </svg>
  );
}
