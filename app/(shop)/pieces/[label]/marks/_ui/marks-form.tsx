'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import { inSvg, placePath } from '@/app/_ui/slab/paths';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { TapLayer } from '@/app/_ui/slab/tap-layer';
import { MarkFields } from '@/app/(shop)/pieces/[label]/marks/_ui/mark-fields';
import { MarkList } from '@/app/(shop)/pieces/[label]/marks/_ui/mark-list';
import styles from '@/app/(shop)/pieces/[label]/marks/_ui/marks.module.css';
import { marksAction } from '@/app/(shop)/pieces/[label]/marks/actions';
import { NEW_MARK, readMark, readPoints, type TypedMark } from '@/app/(shop)/pieces/[label]/marks/typed-mark';
import { writePoint } from '@/app/(shop)/pieces/[label]/marks/write-point';
import type { Outline } from '@/shared/outline/outline';
import { countMarks, type PieceMarks } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface MarksFormProps {
  label: string;
  outline: Outline;
  marks: PieceMarks;
  prefer: UnitSystem;
  /** Else only its three widths are known, and the drawing is straight between them. */
  isMeasured: boolean;
}

/** Marks what is wrong with a slab and where: tapped on its drawing, or typed. */
export function MarksForm({ label, outline, marks, prefer, isMeasured }: MarksFormProps) {
  const [typed, setTyped] = useState<TypedMark>(NEW_MARK);
  const [face, setFace] = useState<'A' | 'B'>('A');
  const { run, pending, problem } = useAct(marksAction);
  const say = useNotice();
  const { mark, problems } = readMark(typed, outline, prefer, false);
  const points = readPoints(typed.points, prefer);
  const sent = problem?.fields ?? {};

  const tap = (point: Point) => {
    const line = writePoint(point, prefer);
    const isOne = typed.kind === 'strap' || typed.shape === 'round';
    setTyped({ ...typed, points: isOne || typed.points.trim() === '' ? line : `${typed.points.trimEnd()}\n${line}` });
  };

  async function write() {
    const answer = await run({ label, add: [typed], remove: [], why: '' });
    if (!answer.ok) return;
    setTyped({ ...NEW_MARK, kind: typed.kind, shape: typed.shape });
    say({ words: 'It is marked on the drawing.' });
  }
  async function takeOff(id: number) {
    const answer = await run({ label, add: [], remove: [id], why: '' });
    if (answer.ok) say({ words: 'It is off the drawing. The history keeps it.' });
  }

  return (
    <>
      <div className={styles.drawing}>
        <SlabDrawing
          outline={outline}
          marks={marks}
          face={face}
          label={`The outline, seen from face ${face}, with ${countMarks(marks)} marks. Points can be typed below.`}
        >
          {mark?.is === 'defect' ? <path className={styles.fresh} d={placePath(mark.place)} /> : null}
          {mark?.is === 'strap' ? (
            <path
              className={styles.freshStrap}
              d={`M${inSvg(mark.from).x} ${inSvg(mark.from).y}L${inSvg(mark.to).x} ${inSvg(mark.to).y}`}
            />
          ) : null}
          {points.ok
            ? points.points.map((point, nr) => {
                const { x, y } = inSvg(point);
                // biome-ignore lint/suspicious/noArrayIndexKey: points are in the order they were tapped.
                return <circle key={nr} className={styles.point} cx={x} cy={y} r={drawnSize(outline)} />;
              })
            : null}
          <TapLayer outline={outline} onTap={tap} />
        </SlabDrawing>
      </div>
      {isMeasured ? null : (
        <p className={styles.soft}>Drawn from three widths. Measure its outline first where an edge counts.</p>
      )}
      <ChoiceChips
        label="Seen from"
        options={[
          { value: 'A', label: 'Face A' },
          { value: 'B', label: 'Face B' },
        ]}
        value={face}
        onChange={(value) => setFace(value === 'B' ? 'B' : 'A')}
      />
      <div className={styles.columns}>
        <form
          noValidate
          onSubmit={(submit) => {
            submit.preventDefault();
            void write();
          }}
        >
          <Section title="New mark">
            <MarkFields typed={typed} errors={{ ...sent, ...problems }} prefer={prefer} onChange={setTyped} />
            {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
            <div className={styles.keys}>
              <Key type="submit" pending={pending} pendingWords="Writing">
                Mark the {typed.kind}
              </Key>
            </div>
          </Section>
        </form>
        <Section title="On it now">
          <MarkList marks={marks} prefer={prefer} pending={pending} onTakeOff={takeOff} />
        </Section>
      </div>
    </>
  );
}

/** A dot that is seen and covers little, millimetres. */
function drawnSize({ ring }: Outline): number {
  const xs = ring.map(({ x }) => x);
  return (Math.max(...xs) - Math.min(...xs)) / 160_000;
}
