'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import { keepDraft, recallDraft } from '@/app/(shop)/arrive/_ui/kept-draft';
import { ChalkDrawing } from '@/app/(shop)/pieces/[label]/measure/_ui/chalk-drawing';
import { GapRows } from '@/app/(shop)/pieces/[label]/measure/_ui/gap-rows';
import styles from '@/app/(shop)/pieces/[label]/measure/_ui/measure.module.css';
import { StationRows } from '@/app/(shop)/pieces/[label]/measure/_ui/station-rows';
import { measureAction } from '@/app/(shop)/pieces/[label]/measure/actions';
import {
  EMPTY_STATION,
  readChalk,
  type TypedChalk,
  type TypedStation,
  unfinished,
} from '@/app/(shop)/pieces/[label]/measure/chalk';
import { sayMarksAfter } from '@/app/(shop)/pieces/[label]/say-marks-after';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface MeasureFormProps {
  label: string;
  /** What the book knows, as it would have been typed. */
  begun: TypedChalk;
  isMeasured: boolean;
  prefer: UnitSystem;
}

const VERSION = 2;
/** `before`: what stood there until the rows were emptied; pressed again they change places. */
type Draft = { readonly typed: TypedChalk; readonly why: string; readonly before?: TypedChalk };
const EMPTY: TypedChalk = { stations: [EMPTY_STATION, EMPTY_STATION, EMPTY_STATION], gaps: [] };

/** A chalk line down the slab, stations along it, the distance to each edge: the drawing grows as they are typed. */
export function MeasureForm({ label, begun, isMeasured, prefer }: MeasureFormProps) {
  const [draft, setDraft] = useState<Draft>({ typed: begun, why: '' });
  const [isKept, setKept] = useState(false);
  const [tried, setTried] = useState(false);
  const { run, pending, problem, forget } = useAct(measureAction);
  const router = useRouter();
  const say = useNotice();
  const name = `measure-${label}`;
  const { typed, why } = draft;

  useEffect(() => {
    const before = recallDraft<Draft>(name, VERSION);
    if (!before) return;
    setDraft(before);
    setKept(true);
  }, [name]);

  const keep = (next: Draft) => {
    setDraft(next);
    keepDraft(name, VERSION, next);
    forget();
  };
  const setStations = (stations: readonly TypedStation[]) => keep({ ...draft, typed: { ...typed, stations } });
  const setGap = (gap: number, stations: readonly TypedStation[]) =>
    keep({ ...draft, typed: { ...typed, gaps: typed.gaps.map((run, nr) => (nr === gap ? stations : run)) } });

  const read = readChalk(typed, prefer);
  const sent = problem?.fields ?? {};
  const problems = { ...sent, ...(tried ? unfinished(typed) : {}), ...read.problems };
  const rows = useRef<HTMLFormElement>(null);

  async function write() {
    setTried(true);
    const answer = await run({ label, why, ...typed });
    if (!answer.ok) {
      rows.current?.querySelector<HTMLInputElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    keepDraft(name, VERSION, undefined);
    say({ words: `Its outline is in the book. ${sayMarksAfter(answer.answer)}`.trim() });
    router.push(`/pieces/${label}`);
  }

  return (
    <form
      ref={rows}
      className={styles.form}
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        void write();
      }}
    >
      <div className={styles.drawing}>
        <ChalkDrawing read={read} problems={problems} prefer={prefer} />
      </div>
      {isKept ? (
        <div className={styles.kept} role="status">
          <p>What you typed here before is kept.</p>
          <Key
            variant="ghost"
            onClick={() => {
              keep({ typed: begun, why: '', before: typed });
              setKept(false);
            }}
          >
            Begin afresh
          </Key>
        </div>
      ) : null}
      <p className={styles.how}>
        Snap a chalk line from end to end. At each station measure how far it is from the start, and from the line to
        the left edge and to the right edge, looking along the line. Both ends and the middle at least; more where it
        bulges.
      </p>
      <Section title="Stations">
        <StationRows
          rows={typed.stations}
          problems={problems}
          doubt={read.doubt}
          prefer={prefer}
          onChange={setStations}
        />
      </Section>
      {typed.gaps.map((gap, nr) => (
        <GapRows
          // biome-ignore lint/suspicious/noArrayIndexKey: gaps are only added at the end and taken out whole; fields keep no state of their own.
          key={nr}
          rows={gap}
          gap={nr}
          problems={problems}
          prefer={prefer}
          onChange={(stations) => setGap(nr, stations)}
          onTakeOut={() => keep({ ...draft, typed: { ...typed, gaps: typed.gaps.filter((_, at) => at !== nr) } })}
        />
      ))}
      <div className={styles.more}>
        {draft.before ? (
          <Key variant="ghost" onClick={() => keep({ typed: draft.before ?? typed, why, before: typed })}>
            Bring the old stations back
          </Key>
        ) : (
          <Key variant="ghost" onClick={() => keep({ typed: EMPTY, why, before: typed })}>
            Start with empty rows
          </Key>
        )}
        <Key
          variant="ghost"
          onClick={() => keep({ ...draft, typed: { ...typed, gaps: [...typed.gaps, [EMPTY_STATION, EMPTY_STATION]] } })}
        >
          It has a gap or a crotch
        </Key>
      </div>
      {isMeasured ? (
        <TextField
          label="Why it is measured again"
          hint="Whoever relied on the old outline will want to know."
          value={why}
          onChange={(next) => keep({ ...draft, why: next })}
          maxLength={300}
          error={sent.why}
        />
      ) : null}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing">
          Outline into the book
        </Key>
      </KeyBar>
    </form>
  );
}
