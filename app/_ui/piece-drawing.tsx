import { Mark, type PieceMark } from '@/app/_ui/piece/piece-mark';
import { joinPoints, lineAcross, pieceOutline, type RoughShape } from '@/app/_ui/piece/piece-outline';
import styles from '@/app/_ui/piece-drawing.module.css';

export interface PieceDrawingProps {
  /** Steadies the drawing: the piece's own label. */
  name: string;
  shape: RoughShape;
  marks?: readonly PieceMark[];
  /** Words that stand on the wood: "101 × 47 in". */
  words?: string;
  /** The length drawn as the whole width. Give the longest piece of a wall to each of its drawings and they share a scale. */
  longestMm?: number;
  /** The drawing in words, for those who do not see it. */
  label: string;
}

/** Finds the longest stretch of clear wood for the words, as a start and an end along the length. */
function clearStretch(lengthMm: number, marks: readonly PieceMark[]): [number, number] {
  const stops = [0, lengthMm];
  for (const mark of marks) {
    if (mark.kind === 'check') stops.push(mark.end === 'start' ? mark.lengthMm : lengthMm - mark.lengthMm);
    else stops.push(mark.atMm);
  }
  stops.sort((a, b) => a - b);
  let best: [number, number] = [0, lengthMm];
  let most = 0;
  stops.forEach((stop, index) => {
    const next = stops[index + 1] ?? stop;
    if (next - stop <= most) return;
    most = next - stop;
    best = [stop, next];
  });
  return best;
}

/** A slab or board drawn to scale from its length and three widths, with what is wrong with it and the straps that hold it. */
export function PieceDrawing({ name, shape, marks = [], words, longestMm, label }: PieceDrawingProps) {
  const outline = pieceOutline(shape, name);
  const whole = Math.max(longestMm ?? shape.lengthMm, shape.lengthMm);
  const room = whole * 0.004;
  const height = outline.widestMm * 1.08 + room * 2;
  const share = (shape.lengthMm + room * 2) / (whole + room * 2);
  const [start, end] = clearStretch(shape.lengthMm, marks);
  const onWood = outline.widestMm / whole > 0.12 && (end - start) / whole > 0.3;
  const first = outline.left[0];
  const last = outline.left.at(-1);
  const lower = [...outline.right].reverse();

  return (
    <div className={styles.piece}>
      <div className={styles.drawing} style={{ width: `${share * 100}%` }} role="img" aria-label={label}>
        <svg
          viewBox={`${-room} ${-height / 2} ${shape.lengthMm + room * 2} ${height}`}
          className={styles.svg}
          aria-hidden="true"
          focusable="false"
        >
          <path className={styles.wood} d={`M${joinPoints(outline.left)}L${joinPoints(lower)}Z`} />
          {[0.2, 0.38, 0.58, 0.8].map((across) => (
            <path key={across} className={styles.grain} d={`M${joinPoints(lineAcross(outline, across))}`} />
          ))}
          {first && last ? (
            <path
              className={styles.sawn}
              d={`M${joinPoints([first, ...lower.slice(-1)])}M${joinPoints([last, ...lower.slice(0, 1)])}`}
            />
          ) : null}
          <path className={shape.liveEdges.left ? styles.bark : styles.sawn} d={`M${joinPoints(outline.left)}`} />
          <path className={shape.liveEdges.right ? styles.bark : styles.sawn} d={`M${joinPoints(outline.right)}`} />
          {marks.map((mark) => (
            <Mark key={JSON.stringify(mark)} mark={mark} lengthMm={shape.lengthMm} outline={outline} />
          ))}
        </svg>
        {words && onWood ? (
          <span
            className={styles.words}
            style={{
              left: `${(start / shape.lengthMm) * 100}%`,
              width: `${((end - start) / shape.lengthMm) * 100}%`,
            }}
          >
            {words}
          </span>
        ) : null}
      </div>
      {words && !onWood ? <p className={styles.under}>{words}</p> : null}
    </div>
  );
}
