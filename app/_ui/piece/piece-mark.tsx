import { joinPoints, lineAcross, type PieceOutline, type Point } from '@/app/_ui/piece/piece-outline';
import styles from '@/app/_ui/piece-drawing.module.css';

export type PieceMark =
  /** A band of strapping round the piece. */
  | { kind: 'strap'; atMm: number }
  /** The piece is parted here. */
  | { kind: 'break'; atMm: number }
  /** A check or split running in from an end; `across` 0 is the left edge, 1 the right. */
  | { kind: 'check'; end: 'start' | 'end'; lengthMm: number; across?: number }
  /** A knot, punk, pith or bark inclusion. */
  | { kind: 'spot'; atMm: number; across: number; sizeMm: number };

/** The drawn point nearest to a place on the piece. */
function placeOn(outline: PieceOutline, lengthMm: number, atMm: number, across: number): Point {
  const line = lineAcross(outline, across);
  const step = Math.round((atMm / lengthMm) * (line.length - 1));
  return line[Math.min(line.length - 1, Math.max(0, step))] ?? { x: atMm, y: 0 };
}

/** One mark on the drawing of a piece. */
export function Mark({ mark, lengthMm, outline }: { mark: PieceMark; lengthMm: number; outline: PieceOutline }) {
  const half = outline.widestMm / 2;
  if (mark.kind === 'strap') {
    return <path className={styles.strap} d={`M${mark.atMm} ${-half * 1.06}V${half * 1.06}`} />;
  }
  if (mark.kind === 'break') {
    const gap = lengthMm * 0.014;
    const side = (way: number) =>
      [0, 0.25, 0.42, 0.65, 0.81, 1].map((across, index) => ({
        x: mark.atMm + way * gap + (index % 2 ? gap : -gap) * 1.3,
        y: placeOn(outline, lengthMm, mark.atMm, across).y,
      }));
    // The gap runs on past both edges, so that their bark is parted too.
    const past = (points: Point[]) => [
      ...points.slice(0, 1).map(({ x }) => ({ x, y: -half * 1.1 })),
      ...points,
      ...points.slice(-1).map(({ x }) => ({ x, y: half * 1.1 })),
    ];
    return (
      <>
        <path className={styles.gap} d={`M${joinPoints(past(side(-1)))}L${joinPoints(past(side(1)).reverse())}Z`} />
        <path className={styles.crack} d={`M${joinPoints(side(-1))}M${joinPoints(side(1))}`} />
      </>
    );
  }
  if (mark.kind === 'check') {
    const line = lineAcross(outline, mark.across ?? 0.5);
    const mouth = (mark.end === 'start' ? line[0] : line.at(-1)) ?? { x: 0, y: 0 };
    const way = mark.end === 'start' ? 1 : -1;
    const at = (part: number, off: number) => ({ x: mouth.x + way * mark.lengthMm * part, y: mouth.y + half * off });
    const wedge = [
      at(0, -0.035),
      at(0.35, -0.045),
      at(0.6, 0.005),
      at(1, 0),
      at(0.55, 0.03),
      at(0.3, -0.005),
      at(0, 0.035),
    ];
    return <path className={styles.check} d={`M${joinPoints(wedge)}Z`} />;
  }
  const { y } = placeOn(outline, lengthMm, mark.atMm, mark.across);
  return <ellipse className={styles.spot} cx={mark.atMm} cy={y} rx={mark.sizeMm / 2} ry={mark.sizeMm / 2.6} />;
}
