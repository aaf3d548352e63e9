import { type ReactNode, useDeferredValue, useMemo, useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { Key } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import { PhotoStage } from '@/app/(shop)/pieces/[label]/photo/_ui/photo-stage';
import type { StageLine } from '@/app/(shop)/pieces/[label]/photo/_ui/stage-lines';
import type { usePhotoDraft } from '@/app/(shop)/pieces/[label]/photo/_ui/use-photo-draft';
import type { Size } from '@/app/(shop)/pieces/[label]/photo/_ui/view';
import { sayDoubt, saySize, workOut } from '@/app/(shop)/pieces/[label]/photo/_ui/work-out';
import { MOST_GAPS, MOST_POINTS } from '@/app/(shop)/pieces/[label]/photo/most-points';
import { sayPhotoFault } from '@/shared/outline/say-photo-fault';
import type { Pixel } from '@/shared/outline/sheet-marks';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The edge of the wood all round, and the gaps right through it. */
export function EdgeStep({
  draft,
  src,
  size,
  prefer,
  children,
}: {
  draft: ReturnType<typeof usePhotoDraft>;
  src: string;
  size: Size;
  prefer: UnitSystem;
  children: ReactNode;
}) {
  const { typed } = draft;
  const [ring, setRing] = useState<number>();
  const now = ring !== undefined && ring < typed.gaps.length ? ring : undefined;
  const points = (now === undefined ? typed.edge : typed.gaps[now]) ?? [];
  const settled = useDeferredValue(typed);
  const { fault, made } = useMemo(() => workOut(settled, prefer), [settled, prefer]);
  const tap = (next: readonly Pixel[], isNew: boolean) =>
    draft.change(
      now === undefined ? { edge: next } : { gaps: typed.gaps.map((gap, nr) => (nr === now ? next : gap)) },
      isNew,
    );
  const others = [typed.edge, ...typed.gaps].filter((other) => other !== points);
  const lines: StageLine[] = [
    { points: typed.marks, look: 'sheet', closed: typed.reference !== 'tapes' },
    ...others.map((other) => ({ points: other, look: 'edge' as const, closed: true })),
    ...(made?.chalk ? [{ points: made.chalk, look: 'chalk' as const, closed: false }] : []),
  ];
  const isHere = fault && 'point' in fault && fault.gap === now;
  const said = fault ? sayPhotoFault(fault.code) : undefined;
  const place = fault && 'point' in fault && fault.gap !== undefined ? `Gap ${fault.gap + 1}` : 'The edge';
  return (
    <>
      <p className={styles.how}>
        {now === undefined
          ? 'Tap round the edge of the wood, all the way. More points where it bends. A tap on the line puts a point between two.'
          : 'Tap round the gap: no wood is in it, right through the slab.'}
      </p>
      <PhotoStage
        src={src}
        photo={size}
        points={points}
        closed={points.length > 2}
        most={MOST_POINTS}
        lines={lines}
        words={made?.chalk ? [{ at: made.chalk[0], words: 'Start' }] : []}
        wrong={isHere && 'point' in fault ? fault.point : undefined}
        noun={now === undefined ? 'Edge point' : `Gap ${now + 1}, point`}
        canUndo={draft.canUndo}
        onUndo={draft.undo}
        onChange={tap}
      />
      {said ? (
        <PlainError
          happened={`${place}${fault && 'point' in fault ? `, point ${fault.point + 1}` : ''}: ${said.says}`}
          kept="Every point is still where you put it."
          toDo={said.toDo}
        />
      ) : made ? (
        <div role="status">
          <p className={styles.size}>{saySize(made, prefer)}</p>
          <p className={styles.says}>{sayDoubt(made, prefer)}</p>
        </div>
      ) : (
        <p className={styles.says} role="status">
          {points.length} tapped. The outline shows from the third on.
        </p>
      )}
      {typed.gaps.length ? (
        <ChoiceChips
          label="Tapping now"
          options={[
            { value: 'edge', label: 'The edge' },
            ...typed.gaps.map((_, nr) => ({ value: `${nr}`, label: `Gap ${nr + 1}` })),
          ]}
          value={now === undefined ? 'edge' : `${now}`}
          onChange={(value) => setRing(value === 'edge' ? undefined : Number(value))}
        />
      ) : null}
      <div className={styles.row}>
        {made ? (
          <Key variant="ghost" onClick={() => draft.change({ fromOtherEnd: !typed.fromOtherEnd })}>
            Start at the other end
          </Key>
        ) : null}
        {typed.edge.length > 2 && typed.gaps.length < MOST_GAPS ? (
          <Key
            variant="ghost"
            onClick={() => {
              draft.change({ gaps: [...typed.gaps, []] });
              setRing(typed.gaps.length);
            }}
          >
            It has a gap
          </Key>
        ) : null}
        {now !== undefined ? (
          <Key
            variant="ghost"
            onClick={() => {
              draft.change({ gaps: typed.gaps.filter((_, nr) => nr !== now) });
              setRing(undefined);
            }}
          >
            Take gap {now + 1} out
          </Key>
        ) : null}
        <Key variant="ghost" onClick={() => draft.goTo('marks')}>
          Back to the sheet
        </Key>
      </div>
      {children}
    </>
  );
}
