'use client';

import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import type { FaultChoices } from '@/app/_server/faults/choices-for-fault';
import type { SeenOnSample } from '@/app/_server/faults/seen-on-sample';
import { useAct } from '@/app/_ui/act/use-act';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { DateTextField } from '@/app/_ui/field/date-text-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { TapLayer } from '@/app/_ui/slab/tap-layer';
import { PictureField } from '@/app/(shop)/_parts/acts/picture-field';
import { FaultDrawing } from '@/app/(shop)/faults/_ui/fault-drawing';
import styles from '@/app/(shop)/faults/_ui/faults.module.css';
import { faultAction } from '@/app/(shop)/faults/actions';
import { readPoints } from '@/app/(shop)/pieces/[label]/marks/read-points';
import { writePoint } from '@/app/(shop)/pieces/[label]/marks/write-point';
import { FAULT_OF } from '@/app/(shop)/samples/look-words';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { FAULT_KINDS, sayFault } from '@/shared/faults/fault-kinds';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface FaultFormProps {
  choices: Pick<FaultChoices, 'lifts' | 'pieces' | 'container'>;
  jobId?: number;
  /** Chosen already, where the way here named it. */
  liftId?: number;
  label?: string;
  /** What a look at a kept sample found, to begin from. */
  seen?: SeenOnSample;
  prefer: UnitSystem;
  today: CalendarDate;
  order: DateOrder;
  /** Where to go once it is written. */
  back: string;
}

/** Writes down what is wrong: what, where on the drawing, how deep, and what it is a fault of. */
export function FaultForm({ choices, jobId, liftId, label, seen, prefer, today, order, back }: FaultFormProps) {
  const [typed, setTyped] = useState({
    kind: (seen && FAULT_OF[seen.result]) ?? '',
    foundOn: sayDate(today, { order }),
    lift: liftId === undefined ? '' : String(liftId),
    piece: label && !choices.container ? label : '',
    place: '',
    depth: '',
    note: seen?.note ?? '',
  });
  const [photo, setPhoto] = useState<File>();
  const { run, pending, problem, forget } = useAct(faultAction);
  const say = useNotice();
  const router = useRouter();
  const form = useRef<HTMLFormElement>(null);
  const set = (field: keyof typeof typed) => (value: string) => {
    forget();
    setTyped((before) => ({ ...before, [field]: value, ...(field === 'piece' ? { place: '' } : {}) }));
  };
  const errors = problem?.fields ?? {};
  const piece = choices.pieces.find((each) => each.label === typed.piece);
  const read = readPoints(typed.place, prefer);
  const found = choices.container?.label ?? (typed.piece || undefined);

  async function write() {
    const answer = await run({
      kind: typed.kind || undefined,
      foundOn: typed.foundOn,
      jobId,
      liftId: typed.lift ? Number(typed.lift) : undefined,
      label: found,
      place: piece?.drawing ? typed.place : '',
      depth: typed.depth,
      note: typed.note,
      photo,
    });
    if (!answer.ok) {
      form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    say({ words: 'The fault is in the book. Trace it to see what else it can concern.' });
    router.push(back);
  }

  return (
    <form
      ref={form}
      className={styles.form}
      noValidate
      onSubmit={(submit) => {
        submit.preventDefault();
        void write();
      }}
    >
      <ChoiceChips
        label="What is wrong?"
        options={FAULT_KINDS.map((kind) => ({ value: kind, label: sayFault(kind) }))}
        value={typed.kind}
        onChange={set('kind')}
        error={errors.kind}
      />
      {choices.lifts.length > 0 ? (
        <SelectField
          label="In which lift?"
          hint="It leads back to the lots that went into it."
          none="Not known"
          optional
          options={choices.lifts.map(({ id, nr, pour, on }) => ({
            value: String(id),
            label: `${pour}, ${nr === 0 ? 'seal coat' : `lift ${nr}`}${on ? `, poured ${sayDate(on as CalendarDate, { order, today })}` : ''}`,
          }))}
          value={typed.lift}
          onChange={set('lift')}
          error={errors.liftId}
        />
      ) : null}
      {choices.container ? (
        <p>
          Found on {printOwnLabel(choices.container.label as OwnLabelCode)}, {choices.container.product}.
        </p>
      ) : choices.pieces.length > 0 ? (
        <SelectField
          label="On which piece?"
          none="None of them, or not known"
          optional
          options={choices.pieces.map((each) => ({
            value: each.label,
            label: `${printOwnLabel(each.label as OwnLabelCode)}, ${each.species} ${each.form}`,
          }))}
          value={typed.piece}
          onChange={set('piece')}
          error={errors.label}
        />
      ) : null}
      {piece?.drawing ? (
        <>
          <div className={styles.drawing}>
            <FaultDrawing
              outline={piece.drawing.outline}
              marks={piece.drawing.marks}
              places={read.ok ? read.points.slice(0, 1) : []}
              label="The outline, seen from face A. The place can be typed below."
            >
              <TapLayer outline={piece.drawing.outline} onTap={(point) => set('place')(writePoint(point, prefer))} />
            </FaultDrawing>
          </div>
          <TextField
            label="Where on it"
            hint="Tap the drawing, or give along and across from the chalk line."
            optional
            value={typed.place}
            onChange={set('place')}
            error={errors.place ?? (read.ok ? undefined : read.says)}
          />
        </>
      ) : null}
      <TextField
        label="How deep"
        hint={prefer === 'metric' ? 'For example 0.8 mm.' : 'For example 1/32 in.'}
        optional
        value={typed.depth}
        onChange={set('depth')}
        error={errors.depth}
      />
      <DateTextField
        label="Found on"
        today={today}
        order={order}
        aim="past"
        value={typed.foundOn}
        onChange={set('foundOn')}
        error={errors.foundOn}
      />
      <TextField
        label="What was seen"
        optional={typed.kind !== 'other'}
        lines={3}
        maxLength={1000}
        value={typed.note}
        onChange={set('note')}
        error={errors.note}
      />
      {found ? (
        <PictureField
          label="Photo"
          optional
          hint="It is kept with the piece or container it shows."
          onChange={setPhoto}
          error={errors.photo}
        />
      ) : null}
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.keys}>
        <Key type="submit" pending={pending} pendingWords="Writing">
          Write the fault down
        </Key>
      </div>
    </form>
  );
}
