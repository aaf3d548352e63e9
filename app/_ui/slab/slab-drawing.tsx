import type { ReactNode } from 'react';
import { grainLines, longEdges } from '@/app/_ui/slab/edges';
import { linePath, openPath, outlinePath, placePath, ringPath } from '@/app/_ui/slab/paths';
import styles from '@/app/_ui/slab/slab-drawing.module.css';
import type { Outline } from '@/shared/outline/outline';
import { boundsOf } from '@/shared/outline/outline-bounds';
import type { PieceMarks } from '@/shared/outline/piece-marks';

/** A straightened photo and where it lies, in micrometres of the drawing. */
export type PhotoUnder = { src: string; left: number; right: number; bottom: number; top: number };

export interface SlabDrawingProps {
  outline: Outline;
  marks?: PieceMarks;
  /** Face B is seen from behind: the left edge lies below, and what is only in face A is dashed. */
  face?: 'A' | 'B';
  photo?: PhotoUnder | undefined;
  /** Long edges that still carry their bark. */
  live?: { left: boolean; right: boolean } | undefined;
  /** Drawn as the whole width, millimetres: give every drawing of a wall the longest and they share a scale. */
  wholeMm?: number;
  /** Draws the chalk line, and says where it starts and which edge is called the left one. */
  lined?: boolean;
  /** The drawing in words, for those who do not see it. */
  label: string;
  /** What lies on the wood, drawn in SVG in millimetres, y downwards (`inSvg`, `ringPath`). */
  children?: ReactNode;
  /** Words over the drawing, in HTML. */
  over?: ReactNode;
}

const ROOM = 0.012;
const GRAIN = [0.2, 0.4, 0.6, 0.8];

/**
 * A slab drawn to scale from its measured outline, with its defects, end checks and straps where they are. Seen from face
 * A the start of the chalk line is on the left and the left edge above.
 */
export function SlabDrawing({
  outline,
  marks,
  face = 'A',
  photo,
  live,
  wholeMm,
  lined = false,
  label,
  children,
  over,
}: SlabDrawingProps) {
  const bounds = boundsOf(outline.ring);
  const [length, width] = [(bounds.right - bounds.left) / 1000, (bounds.top - bounds.bottom) / 1000];
  const whole = Math.max(wholeMm ?? length, length);
  const room = whole * ROOM;
  const box = {
    x: bounds.left / 1000 - room,
    y: -bounds.top / 1000 - room,
    width: length + 2 * room,
    height: width + 2 * room,
  };
  const wood = outlinePath(outline);
  /** How far down the drawing the chalk line runs, as a part of its height. */
  const lineAt = -box.y / box.height;
  const edges = longEdges(outline);
  return (
    <div
      className={styles.drawing}
      style={{ width: `${(box.width / (whole + 2 * room)) * 100}%` }}
      role="img"
      aria-label={label}
    >
      <svg
        viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
        className={styles.svg}
        aria-hidden="true"
        focusable="false"
      >
        <g transform={face === 'B' ? `matrix(1 0 0 -1 0 ${2 * box.y + box.height})` : undefined}>
          <path className={styles.wood} d={wood} />
          {photo ? null : (
            <>
              {grainLines(edges, GRAIN).map((line, nr) => (
                <path key={GRAIN[nr]} className={styles.grain} d={openPath(line)} />
              ))}
              {outline.holes.map((hole) => (
                <path key={ringPath(hole)} className={styles.gap} d={ringPath(hole)} />
              ))}
            </>
          )}
          {photo ? (
            <image
              href={photo.src}
              x={photo.left / 1000}
              y={-photo.top / 1000}
              width={(photo.right - photo.left) / 1000}
              height={(photo.top - photo.bottom) / 1000}
              preserveAspectRatio="none"
            />
          ) : null}
          <path className={styles.edge} d={wood} />
          {live?.left ? <path className={styles.bark} d={openPath(edges.left)} /> : null}
          {live?.right ? <path className={styles.bark} d={openPath(edges.right)} /> : null}
          {lined ? (
            <path className={styles.line} d={linePath({ x: bounds.left, y: 0 }, { x: bounds.right, y: 0 })} />
          ) : null}
          {marks ? <MarksOf marks={marks} outline={outline} face={face} /> : null}
          {children}
        </g>
      </svg>
      {lined ? (
        <div className={styles.tags} aria-hidden="true">
          <span style={{ left: 0, top: `${100 * (face === 'A' ? lineAt : 1 - lineAt)}%` }}>start</span>
          <span data-edge style={{ left: '50%', top: face === 'A' ? 0 : '100%' }}>
            left edge
          </span>
        </div>
      ) : null}
      {over}
    </div>
  );
}

function MarksOf({ marks, outline, face }: { marks: PieceMarks; outline: Outline; face: 'A' | 'B' }) {
  const { left, right, bottom, top } = boundsOf(outline.ring);
  return (
    <>
      {marks.endChecks.map(({ id, end, depth }) => {
        const x = end === 'start' ? left + depth / 1000 : right - depth / 1000;
        return <path key={id} className={styles.trim} d={linePath({ x, y: bottom }, { x, y: top })} />;
      })}
      {marks.defects.map(({ id, place, depth, decision }) => (
        <path
          key={id}
          className={styles.defect}
          data-decision={decision}
          data-behind={(depth.face !== 'through' && depth.face !== face) || undefined}
          d={placePath(place)}
        />
      ))}
      {marks.straps.map(({ id, from, to }) => (
        <path key={id} className={styles.strap} d={linePath(from, to)} />
      ))}
    </>
  );
}
