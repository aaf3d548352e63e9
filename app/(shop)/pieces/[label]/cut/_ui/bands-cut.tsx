'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/pieces/[label]/cut/_ui/cut.module.css';
import type { CutFormProps } from '@/app/(shop)/pieces/[label]/cut/_ui/cut-form';
import { LinesCut } from '@/app/(shop)/pieces/[label]/cut/_ui/lines-cut';
import { strapsAction } from '@/app/(shop)/pieces/[label]/cut/actions';
import { newLine, type TypedLine } from '@/app/(shop)/pieces/[label]/cut/typed-cut';
import { writePoint } from '@/app/(shop)/pieces/[label]/marks/write-point';
import { breakLines } from '@/shared/outline/break-lines';

/** The bands are cut: the slab holds and only loses them, or it falls into pieces along its breaks. */
export function BandsCut(props: CutFormProps) {
  const { piece, prefer } = props;
  const breaks = breakLines(piece.marks.defects).map(
    (points): TypedLine => ({ ...newLine('break'), points: points.map((each) => writePoint(each, prefer)).join('\n') }),
  );
  const [falls, setFalls] = useState(breaks.length > 0 ? 'falls' : 'holds');
  return (
    <>
      <ChoiceChips
        label="When the bands come off"
        options={[
          { value: 'holds', label: 'It holds', hint: 'it stays one piece' },
          { value: 'falls', label: 'It falls apart', hint: 'along its breaks' },
        ]}
        value={falls}
        onChange={setFalls}
      />
      <p className={styles.caution}>
        A strapped slab can spring open. Stand clear of its ends, support both sides, and clamp it before you cut a
        band.
      </p>
      {falls === 'falls' ? (
        <>
          <p className={styles.soft}>
            {breaks.length > 0
              ? 'The breaks marked on it are drawn in. Put them right where it fell otherwise.'
              : 'No break is marked on it. Tap along where it broke.'}
          </p>
          <LinesCut {...props} bands="cut" begun={breaks.length > 0 ? breaks : [newLine('break')]} />
        </>
      ) : (
        <Holds label={piece.label} />
      )}
    </>
  );
}

function Holds({ label }: { label: string }) {
  const [why, setWhy] = useState('');
  const { run, pending, problem } = useAct(strapsAction);
  const router = useRouter();
  const say = useNotice();
  return (
    <form
      noValidate
      onSubmit={async (submit) => {
        submit.preventDefault();
        const answer = await run({ label, why });
        if (!answer.ok) return;
        say({ words: 'Its bands are off the drawing. The history keeps them.' });
        router.push(`/pieces/${label}`);
      }}
    >
      <TextField label="What was seen" optional maxLength={300} value={why} onChange={setWhy} />
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing">
          Take its bands off
        </Key>
      </KeyBar>
    </form>
  );
}
