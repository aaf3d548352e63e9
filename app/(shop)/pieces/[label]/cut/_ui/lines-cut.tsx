'use client';

import { useEffect, useRef, useState } from 'react';
import { useShowTrouble } from '@/app/_ui/act/show-trouble';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import { keepDraft, recallDraft } from '@/app/(shop)/arrive/_ui/kept-draft';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import { CutDrawing } from '@/app/(shop)/pieces/[label]/cut/_ui/cut-drawing';
import type { CutFormProps } from '@/app/(shop)/pieces/[label]/cut/_ui/cut-form';
import { LineCards } from '@/app/(shop)/pieces/[label]/cut/_ui/line-cards';
import { PartsList } from '@/app/(shop)/pieces/[label]/cut/_ui/parts-list';
import { cutAction } from '@/app/(shop)/pieces/[label]/cut/actions';
import type { BecomesWhat } from '@/app/(shop)/pieces/[label]/cut/become';
import { planCut, sayHouse } from '@/app/(shop)/pieces/[label]/cut/plan-cut';
import { tapLine } from '@/app/(shop)/pieces/[label]/cut/tap-line';
import { isDrawn, newLine, readLines, type TypedLine } from '@/app/(shop)/pieces/[label]/cut/typed-cut';

const VERSION = 1;
type Draft = {
  readonly lines: readonly TypedLine[];
  readonly kerf: string;
  readonly as: Readonly<Record<number, BecomesWhat>>;
  readonly freed: readonly number[];
  readonly why: string;
};

/** Lines drawn or typed on the slab, the pieces they make, and what becomes of each. */
export function LinesCut({
  piece,
  house,
  kerf,
  prefer,
  bands,
  begun,
}: CutFormProps & {
  bands: 'kept' | 'cut';
  begun: readonly TypedLine[];
}) {
  const fresh: Draft = { lines: begun, kerf, as: {}, freed: [], why: '' };
  const [draft, setDraft] = useState<Draft>(fresh);
  const [at, setAt] = useState(0);
  const [tried, setTried] = useState(false);
  const { run, pending, problem } = useAct(cutAction);
  const form = useRef<HTMLFormElement>(null);
  useShowTrouble(form, problem);
  const name = `cut-${piece.label}-${piece.shapeId ?? 0}-${bands}`;
  useEffect(() => {
    const before = recallDraft<Draft>(name, VERSION);
    if (before) setDraft(before);
  }, [name]);
  const keep = (more: Partial<Draft>) => {
    const next = { ...draft, ...more };
    setDraft(next);
    keepDraft(name, VERSION, next);
  };
  // Another line makes other pieces: what was chosen for number two was chosen for another one.
  const setLines = (lines: readonly TypedLine[]) => keep({ lines, as: {}, freed: [] });

  const { outline, marks, flags } = piece;
  const read = readLines(draft.lines, draft.kerf, outline, prefer, tried);
  const plan = planCut(piece, read.lines, house, prefer, draft.as);
  const problems: Record<string, string | undefined> = { ...problem?.fields, ...read.problems };
  const here = draft.lines[at];
  const drawn = read.lines.find(({ nr }) => nr === at)?.line.points ?? [];
  const kept = plan.rows.filter(({ as }) => as !== 'scrap').length;
  const lineFault = plan.fault && draft.lines.length > 0 ? plan.fault : undefined;

  async function write() {
    setTried(true);
    const whole = readLines(draft.lines, draft.kerf, outline, prefer, true);
    if (Object.keys(whole.problems).length > 0 || plan.fault) return;
    const become = plan.rows.map(({ as }, nr) => ({ as, promised: !draft.freed.includes(nr) }));
    const { lines, why } = draft;
    const sent = { label: piece.label, shapeId: piece.shapeId, lines, kerf: draft.kerf, bands, become, why };
    const answer = await run(sent);
    if (answer.ok) keepDraft(name, VERSION, undefined);
  }

  return (
    <form
      ref={form}
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        void write();
      }}
    >
      <CutDrawing
        outline={outline}
        marks={marks}
        live={{ left: flags.includes('live-edge-left'), right: flags.includes('live-edge-right') }}
        parts={plan.parts.map((part, nr) => ({ outline: part, isScrap: plan.rows[nr]?.as === 'scrap' }))}
        points={drawn}
        onTap={(point) => {
          if (here) setLines(draft.lines.map((line, nr) => (nr === at ? tapLine(line, point, outline, prefer) : line)));
        }}
      />
      <div className={styles.columns}>
        <Section title={bands === 'cut' ? 'Where it breaks' : 'The cuts'} aside={`${draft.lines.length} in this act`}>
          <LineCards
            lines={draft.lines}
            at={at}
            before={plan.before}
            problems={problems}
            prefer={prefer}
            onChange={setLines}
            onAt={setAt}
          />
          {lineFault ? (
            <p className={styles.fault} role="status">
              {lineFault}
            </p>
          ) : null}
          <div className={styles.keys}>
            <Key
              variant="ghost"
              onClick={() => {
                setLines([...draft.lines, newLine(bands === 'cut' ? 'break' : (here?.way ?? 'cross'))]);
                setAt(draft.lines.length);
              }}
            >
              Add a cut
            </Key>
          </div>
          {draft.lines.some(({ way }) => way !== 'break') ? (
            <LengthField
              label="Kerf"
              hint="What the saw takes: half of it to either side of every line. It goes with the sawdust."
              prefer={prefer}
              value={draft.kerf}
              onChange={(next) => keep({ kerf: next })}
              error={problems.kerf}
            />
          ) : null}
        </Section>
        <Section title="The pieces" aside={plan.lost}>
          {plan.rows.length === 0 ? (
            <p className={styles.soft}>
              {here && isDrawn(here)
                ? 'Tap along the line on the drawing: the pieces show as soon as it has two points.'
                : 'Tap the drawing where the saw goes, or type how far.'}
            </p>
          ) : (
            <PartsList
              rows={plan.rows.map((row, nr) => ({ ...row, promised: !draft.freed.includes(nr) }))}
              house={sayHouse(house, prefer)}
              job={piece.job}
              isSheet={piece.form === 'sheet'}
              onAs={(nr, as) => keep({ as: { ...draft.as, [nr]: as } })}
              onPromised={(nr, promised) =>
                keep({ freed: promised ? draft.freed.filter((one) => one !== nr) : [...draft.freed, nr] })
              }
            />
          )}
          <TextField
            label="What for"
            optional
            maxLength={300}
            value={draft.why}
            onChange={(why) => keep({ why })}
            error={problems.why}
          />
        </Section>
      </div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing">
          {sayKey(bands, draft.lines, plan.rows.length, kept)}
        </Key>
      </KeyBar>
    </form>
  );
}

function sayKey(bands: 'kept' | 'cut', lines: readonly TypedLine[], parts: number, kept: number): string {
  const breaks = lines.every(({ way }) => way === 'break');
  const verb = bands === 'cut' ? 'Cut the bands:' : breaks ? 'Break it into' : 'Cut it into';
  if (parts === 0) return breaks ? 'Break it' : 'Cut it';
  const scrap = parts - kept;
  return `${verb} ${parts} piece${parts === 1 ? '' : 's'}${scrap > 0 ? `, ${scrap} to scrap` : ''}`;
}
