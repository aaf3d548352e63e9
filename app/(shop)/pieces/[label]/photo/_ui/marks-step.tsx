import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import styles from '@/app/(shop)/pieces/[label]/photo/_ui/photo.module.css';
import { PhotoStage } from '@/app/(shop)/pieces/[label]/photo/_ui/photo-stage';
import type { StageLine, StageWords } from '@/app/(shop)/pieces/[label]/photo/_ui/stage-lines';
import type { usePhotoDraft } from '@/app/(shop)/pieces/[label]/photo/_ui/use-photo-draft';
import type { Size } from '@/app/(shop)/pieces/[label]/photo/_ui/view';
import { workOutMarks } from '@/app/(shop)/pieces/[label]/photo/_ui/work-out';
import { readReference } from '@/app/(shop)/pieces/[label]/photo/typed-measuring';
import { sayMiss } from '@/shared/outline/say-miss';
import { sayPhotoFault } from '@/shared/outline/say-photo-fault';
import { nanometres } from '@/shared/units/nanometres';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

/** The four corners of the sheet, or both ends of two tapes. */
export function MarksStep({
  draft,
  src,
  size,
  prefer,
}: {
  draft: ReturnType<typeof usePhotoDraft>;
  src: string;
  size: Size;
  prefer: UnitSystem;
}) {
  const { typed } = draft;
  const { marks } = typed;
  const isTapes = typed.reference === 'tapes';
  const { reference } = readReference(typed, prefer);
  const { fault, atMarks } = workOutMarks(typed, prefer);
  const [a, b, c, d] = marks;
  const lines: StageLine[] = !isTapes
    ? [{ points: marks, look: 'sheet', closed: marks.length === 4 }]
    : [
        { points: marks.slice(0, 2), look: 'sheet', closed: false },
        { points: marks.slice(2), look: 'sheet', closed: false },
      ];
  const words: StageWords[] = [];
  if (a && b && c && d && !fault && reference?.kind === 'sheet') {
    const say = (mm: number) => printLength(nanometres(Math.round(mm * 1e6)), { prefer, style: 'inches' });
    words.push({ at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, words: say(reference.width) });
    words.push({ at: { x: (b.x + c.x) / 2, y: (b.y + c.y) / 2 }, words: say(reference.height) });
  }
  const said = fault ? sayPhotoFault(fault.code) : undefined;
  return (
    <>
      <p className={styles.how}>
        {isTapes
          ? 'Tap the first tape at its lower and its higher reading, then the second tape so.'
          : 'Tap the four corners of the sheet, one after another round it.'}{' '}
        Then drag each until it sits: the magnifier shows what is under your finger.
      </p>
      <PhotoStage
        src={src}
        photo={size}
        points={marks}
        closed={false}
        most={4}
        lines={lines}
        words={words}
        wrong={fault && 'mark' in fault ? fault.mark : undefined}
        noun={isTapes ? 'Tape mark' : 'Corner'}
        canUndo={draft.canUndo}
        onUndo={draft.undo}
        onChange={(next, isNew) => draft.change({ marks: next }, isNew)}
      />
      {said ? (
        <PlainError happened={said.says} kept="Every mark is still where you put it." toDo={said.toDo} />
      ) : (
        <p className={styles.says} role="status">
          {marks.length < 4
            ? `${marks.length} of 4 marked.`
            : atMarks === undefined
              ? 'Go back and give the sizes.'
              : `All four are marked. Set with care, a corner is true to about ${sayMiss(atMarks, prefer)}.`}
        </p>
      )}
      <div className={styles.row}>
        {words.length ? (
          <Key variant="ghost" onClick={() => draft.change({ otherWay: !typed.otherWay })}>
            The long side is the other one
          </Key>
        ) : null}
        <Key variant="ghost" onClick={() => draft.goTo('photo')}>
          Back to the photo
        </Key>
      </div>
      <KeyBar>
        <Key disabled={atMarks === undefined} onClick={() => draft.goTo('edge')}>
          Go on to the edge
        </Key>
      </KeyBar>
    </>
  );
}
