'use client';

import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { EdgeStep } from '@/app/(shop)/pieces/[label]/photo/_ui/edge-step';
import { MarksStep } from '@/app/(shop)/pieces/[label]/photo/_ui/marks-step';
import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import { PhotoStep } from '@/app/(shop)/pieces/[label]/photo/_ui/photo-step';
import { usePhotoDraft } from '@/app/(shop)/pieces/[label]/photo/_ui/use-photo-draft';
import { usePicture } from '@/app/(shop)/pieces/[label]/photo/_ui/use-picture';
import { photoMeasureAction } from '@/app/(shop)/pieces/[label]/photo/actions';
import { readReference } from '@/app/(shop)/pieces/[label]/photo/typed-measuring';
import { sayMarksAfter } from '@/app/(shop)/pieces/[label]/say-marks-after';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface PhotoFormProps {
  label: string;
  isMeasured: boolean;
  prefer: UnitSystem;
}

/** A photo of the slab with a sheet of known size on it: the sheet is marked, the edge tapped, the outline worked out. */
export function PhotoForm({ label, isMeasured, prefer }: PhotoFormProps) {
  const draft = usePhotoDraft(label);
  const { typed, why, step, file } = draft;
  const picture = usePicture(file);
  const { src, size } = picture;
  const [tried, setTried] = useState(false);
  const [missing, setMissing] = useState<string>();
  const { run, pending, problem, forget } = useAct(photoMeasureAction, { keepAs: `photo-${label}` });
  const router = useRouter();
  const say = useNotice();
  const { problems } = readReference(typed, prefer);

  function goToMarks() {
    setTried(true);
    setMissing(file ? undefined : 'Take or choose a photo first.');
    if (!src || Object.keys(problems).length > 0) return;
    forget();
    draft.goTo('marks');
  }

  async function write() {
    if (!file || !size) return draft.goTo('photo');
    const { reference, sizes, otherWay, marks, edge, gaps, fromOtherEnd } = typed;
    const what = { reference, sizes, otherWay, marks, edge, gaps: gaps.filter((gap) => gap.length > 0), fromOtherEnd };
    const answer = await run({ label, why, photo: file, seen: size, ...what });
    if (!answer.ok) return;
    draft.forget();
    say({ words: `Its outline is in the book, the photo under it. ${sayMarksAfter(answer.answer)}`.trim() });
    router.push(`/pieces/${label}`);
  }

  const kept = draft.isRecalled ? (
    <div className={styles.kept} role="status">
      <p>What you tapped here before is kept. It is not yet in the book.</p>
      <Key variant="ghost" onClick={draft.forget}>
        Begin afresh
      </Key>
    </div>
  ) : null;

  if (step === 'photo' || !src || !size)
    return (
      <div className={styles.form}>
        {kept}
        <PhotoStep
          draft={draft}
          picture={picture}
          problems={tried ? problems : {}}
          wrong={file ? undefined : missing}
          prefer={prefer}
          onGoOn={goToMarks}
        />
      </div>
    );
  if (step === 'marks')
    return (
      <div className={styles.form}>
        {kept}
        <MarksStep draft={draft} src={src} size={size} prefer={prefer} />
      </div>
    );
  return (
    <div className={styles.form}>
      {kept}
      <EdgeStep draft={draft} src={src} size={size} prefer={prefer}>
        {isMeasured ? (
          <TextField
            label="Why it is measured again"
            hint="Whoever relied on the old outline will want to know."
            value={why}
            onChange={draft.setWhy}
            maxLength={300}
            error={problem?.fields?.why}
          />
        ) : null}
      </EdgeStep>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key
          pending={pending}
          pendingWords="Sending the photo"
          disabled={typed.edge.length < 3}
          onClick={() => void write()}
        >
          Outline into the book
        </Key>
      </KeyBar>
    </div>
  );
}
