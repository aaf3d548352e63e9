'use client';

import { useEffect, useRef, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import { keepDraft, recallDraft } from '@/app/(shop)/arrive/_ui/kept-draft';
import { MarkFields } from '@/app/(shop)/pieces/[label]/marks/_ui/mark-fields';
import { MarkList } from '@/app/(shop)/pieces/[label]/marks/_ui/mark-list';
import styles from '@/app/(shop)/pieces/[label]/marks/_ui/marks.module.css';
import { MarksDrawing } from '@/app/(shop)/pieces/[label]/marks/_ui/marks-drawing';
import { MarksOfBefore } from '@/app/(shop)/pieces/[label]/marks/_ui/marks-of-before';
import { marksAction } from '@/app/(shop)/pieces/[label]/marks/actions';
import { markAsTyped } from '@/app/(shop)/pieces/[label]/marks/mark-as-typed';
import { NEW_MARK, readMark, type TypedMark } from '@/app/(shop)/pieces/[label]/marks/typed-mark';
import { writePoint } from '@/app/(shop)/pieces/[label]/marks/write-point';
import type { Outline } from '@/shared/outline/outline';
import type { PieceMarks } from '@/shared/outline/piece-marks';
import type { Point } from '@/shared/outline/point';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface MarksFormProps {
  label: string;
  outline: Outline;
  marks: PieceMarks;
  /** Numbers of the marks that do not lie on the wood. */
  off: readonly number[];
  prefer: UnitSystem;
  /** The measuring that counts; null where only its three widths are known, and the drawing is straight between them. */
  shapeId: number | null;
  /** Numbers of the marks made on an earlier measuring. */
  before: readonly number[];
}

const VERSION = 1;
/** `changes`: the mark it is to stand in the place of. */
type Draft = { readonly typed: TypedMark; readonly changes?: number };
const FRESH: Draft = { typed: NEW_MARK };

/** Marks what is wrong with a slab and where: tapped on its drawing, or typed. */
export function MarksForm({ label, outline, marks, off, prefer, shapeId, before }: MarksFormProps) {
  const [draft, setDraft] = useState<Draft>(FRESH);
  const [face, setFace] = useState<'A' | 'B'>('A');
  const { run, pending, problem, forget } = useAct(marksAction);
  const say = useNotice();
  const form = useRef<HTMLFormElement>(null);
  const name = `marks-${label}`;
  const { typed } = draft;
  const changed = draft.changes === undefined ? undefined : markAsTyped(marks, draft.changes, prefer);
  const { mark, problems } = readMark(typed, outline, prefer, false);

  useEffect(() => {
    const kept = recallDraft<Draft>(name, VERSION);
    if (kept) setDraft(kept);
  }, [name]);

  const keep = (next: Draft) => {
    setDraft(next);
    keepDraft(name, VERSION, next === FRESH ? undefined : next);
    forget();
  };
  const tap = (point: Point) => {
    const line = writePoint(point, prefer);
    const isOne = typed.kind === 'strap' || typed.shape === 'round';
    const points = isOne || typed.points.trim() === '' ? line : `${typed.points.trimEnd()}\n${line}`;
    keep({ ...draft, typed: { ...typed, points } });
  };

  async function write() {
    const answer = await run({ label, add: [typed], remove: changed ? [draft.changes] : [], why: '', shapeId });
    if (!answer.ok) {
      form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    keepDraft(name, VERSION, undefined);
    // Marks come in runs of a kind.
    setDraft({ typed: { ...NEW_MARK, kind: typed.kind, shape: changed ? NEW_MARK.shape : typed.shape } });
    say({ words: changed ? 'It is changed on the drawing. The history keeps what it was.' : 'It is on the drawing.' });
  }
  async function takeOff(id: number) {
    const answer = await run({ label, add: [], remove: [id], why: '', shapeId });
    if (!answer.ok) return;
    if (draft.changes === id) keep(FRESH);
    say({ words: 'It is off the drawing. Its history undoes it.' });
  }
  function change(id: number) {
    const begun = markAsTyped(marks, id, prefer);
    if (!begun) return;
    keep({ typed: begun, changes: id });
    form.current?.scrollIntoView({ block: 'start' });
    form.current?.querySelector<HTMLElement>('select')?.focus({ preventScroll: true });
  }

  return (
    <>
      <MarksDrawing
        outline={outline}
        marks={marks}
        face={face}
        fresh={mark}
        points={typed.points}
        prefer={prefer}
        onTap={tap}
      />
      {shapeId !== null ? null : (
        <p className={styles.soft}>Drawn from three widths. Measure its outline first where an edge counts.</p>
      )}
      <ChoiceChips
        label="From which face"
        options={[
          { value: 'A', label: 'Face A' },
          { value: 'B', label: 'Face B' },
        ]}
        value={face}
        onChange={(value) => setFace(value === 'B' ? 'B' : 'A')}
      />
      <div className={styles.columns}>
        <form
          ref={form}
          className={styles.form}
          noValidate
          onSubmit={(submit) => {
            submit.preventDefault();
            void write();
          }}
        >
          <Section title={changed ? `Change the ${changed.kind}` : 'New mark'}>
            <MarkFields
              typed={typed}
              errors={{ ...problem?.fields, ...problems }}
              prefer={prefer}
              onChange={(next) => keep({ ...draft, typed: next })}
            />
            {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
            <div className={styles.keys}>
              <Key type="submit" pending={pending} pendingWords="Writing">
                {changed ? `Change the ${changed.kind}` : `Mark the ${typed.kind}`}
              </Key>
              {changed ? (
                <Key variant="ghost" onClick={() => keep(FRESH)}>
                  Leave it as it was
                </Key>
              ) : null}
            </div>
          </Section>
        </form>
        <Section title="On it now">
          {shapeId !== null && before.length > 0 ? (
            <MarksOfBefore label={label} shapeId={shapeId} count={before.length} />
          ) : null}
          <MarkList marks={marks} prefer={prefer} off={off} pending={pending} onTakeOff={takeOff} onChange={change} />
        </Section>
      </div>
    </>
  );
}
