import { useEffect, useRef, useState } from 'react';
import { keepDraft, recallDraft } from '@/app/(shop)/arrive/_ui/kept-draft';
import { keepFile, recallFile } from '@/app/(shop)/pieces/[label]/photo/_ui/kept-file';
import { NOTHING_TYPED, type TypedMeasuring } from '@/app/(shop)/pieces/[label]/photo/typed-measuring';

export type Step = 'photo' | 'marks' | 'edge';
type Draft = {
  readonly typed: TypedMeasuring;
  readonly why: string;
  readonly step: Step;
  /** Which photo was tapped on, by its size in bytes. */
  readonly tappedOn?: number;
};

const VERSION = 1;
const MOST_UNDO = 100;
const BEGUN: Draft = { typed: NOTHING_TYPED, why: '', step: 'photo' };

/** What was tapped and typed, and the photo itself, kept on the device until it is in the book; and the way back. */
export function usePhotoDraft(label: string) {
  const name = `photo-${label}`;
  const [draft, setDraft] = useState<Draft>(BEGUN);
  const [file, setFile] = useState<File>();
  const [before, setBefore] = useState<readonly TypedMeasuring[]>([]);
  const [isRecalled, setRecalled] = useState(false);
  const [isFileKept, setFileKept] = useState(true);
  const latest = useRef(draft);

  const keep = (next: Draft) => {
    latest.current = next;
    setDraft(next);
    keepDraft(name, VERSION, next);
  };

  useEffect(() => {
    const kept = recallDraft<Draft>(name, VERSION);
    if (!kept) return;
    latest.current = kept;
    setDraft(kept);
    let isGone = false;
    void recallFile(name).then((photo) => {
      if (isGone) return;
      setFile(photo);
      setRecalled(true);
    });
    return () => {
      isGone = true;
    };
  }, [name]);

  return {
    ...draft,
    file,
    isAnother:
      file !== undefined && draft.tappedOn !== undefined && draft.tappedOn !== file.size && hasPoints(draft.typed),
    isRecalled,
    isFileKept,
    canUndo: before.length > 0,
    /** Changes what was tapped; `remember` unless it is the middle of one movement. */
    change(next: Partial<TypedMeasuring>, remember = true) {
      const last = latest.current.typed;
      if (remember) setBefore((all) => [...all.slice(1 - MOST_UNDO), last]);
      const { marks, edge } = next;
      const tappedOn = (marks || edge) && file ? { tappedOn: file.size } : {};
      keep({ ...latest.current, ...tappedOn, typed: { ...latest.current.typed, ...next } });
    },
    undo() {
      const last = before.at(-1);
      if (!last) return;
      setBefore(before.slice(0, -1));
      keep({ ...latest.current, typed: last });
    },
    goTo: (step: Step) => {
      setBefore([]);
      keep({ ...latest.current, step });
    },
    setWhy: (why: string) => keep({ ...latest.current, why }),
    takePhoto(photo: File | undefined) {
      setFile(photo);
      setRecalled(false);
      if (photo) void keepFile(name, photo).then(setFileKept);
    },
    /** Lets all of it go. */
    forget() {
      keepDraft(name, VERSION, undefined);
      void keepFile(name, undefined);
      latest.current = BEGUN;
      setDraft(BEGUN);
      setFile(undefined);
      setBefore([]);
      setRecalled(false);
    },
  };
}

const hasPoints = ({ marks, edge }: TypedMeasuring) => marks.length + edge.length > 0;
