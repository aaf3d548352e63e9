import { useId } from 'react';
import { inSvg, outlinePath, ringPath } from '@/app/_ui/slab/paths';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import styles from '@/app/(shop)/on-hand/fits/_ui/fits.module.css';
import type { FitView } from '@/app/(shop)/on-hand/fits/fit-view';
import { boundsOf } from '@/shared/outline/outline-bounds';

interface FitDrawingProps {
  view: FitView;
  /** The words that stand on the wood; none where several drawings share them. */
  words: string | undefined;
  /** The length drawn as the whole width, the same for every drawing of a list, millimetres. */
  wholeMm: number;
  /** The drawing in words. */
  label: string;
}

/** A piece drawn to scale with the top on it, or the part of the top that it gives. */
export function FitDrawing({ view, words, wholeMm, label }: FitDrawingProps) {
  const clip = useId();
  const wood = boundsOf(view.outline.ring);
  const top = boundsOf(view.top);
  const tick = wholeMm * 0.02;
  const length = wood.right - wood.left;
  const share = (from: number, to: number) => `${((to - from) / length) * 100}%`;
  const onWood = (top.top - top.bottom) / 1000 / wholeMm > 0.13 && (top.right - top.left) / 1000 / wholeMm > 0.36;
  return (
    <div className={styles.drawing}>
      <SlabDrawing
        outline={view.outline}
        marks={view.marks}
        live={view.live}
        wholeMm={wholeMm}
        label={label}
        over={
          words && onWood ? (
            <span
              className={styles.words}
              style={{ left: share(wood.left, top.left), width: share(top.left, top.right) }}
            >
              <span>{words}</span>
            </span>
          ) : null
        }
      >
        {view.isPart ? (
          <clipPath id={clip}>
            <path d={outlinePath(view.outline)} />
          </clipPath>
        ) : null}
        <g clipPath={view.isPart ? `url(#${clip})` : undefined}>
          <path className={styles.top} data-line={view.line} d={ringPath(view.top)} />
        </g>
        {view.tight.map((place) => {
          const { x, y } = inSvg(place);
          return <path key={y} className={styles.tight} d={`M${x} ${y - tick}V${y + tick}`} />;
        })}
      </SlabDrawing>
      {words && !onWood ? <p className={styles.under}>{words}</p> : null}
    </div>
  );
}
