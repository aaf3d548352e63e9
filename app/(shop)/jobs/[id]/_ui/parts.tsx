'use client';

import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { Fold } from '@/app/_ui/fold';
import { Key, LinkKey } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import styles from '@/app/(shop)/jobs/[id]/_ui/job.module.css';
import { NEW_PART, PartForm, type TypedPart } from '@/app/(shop)/jobs/[id]/_ui/part-form';
import { addPartAction, changePartAction, removePartAction } from '@/app/(shop)/jobs/[id]/actions';
import type { UnitSystem } from '@/shared/units/unit-system';

/** A part, ready to be shown and to be changed. */
export type PartRow = {
  id: number;
  typed: TypedPart;
  says: string;
  /** What it takes, each in words: hardware, resin, finish, wood. */
  needs: readonly string[];
};

/** What is made: tops with their shape and size, base parts, others. */
export function Parts({
  jobId,
  parts,
  prefer,
  open,
}: {
  jobId: number;
  parts: readonly PartRow[];
  prefer: UnitSystem;
  open: boolean;
}) {
  const [added, setAdded] = useState(NEW_PART);
  return (
    <>
      {parts.length === 0 ? (
        <p className={styles.soft}>
          No part is named yet. A top with its size is what finish is reckoned from, and what slabs are looked for with.
        </p>
      ) : (
        <ul className={styles.parts} aria-label="Parts of this job">
          {parts.map((part) => (
            <li key={part.id}>
              {open ? <PartFold jobId={jobId} part={part} prefer={prefer} /> : <PartLine part={part} />}
              {part.needs.length > 0 ? <p className={styles.takes}>Takes {part.needs.join('; ')}</p> : null}
            </li>
          ))}
        </ul>
      )}
      {open ? (
        <Fold title="Add a part">
          <ActForm
            action={addPartAction}
            input={{ ...added, jobId }}
            words={added.name.trim() ? `Add ${added.name.trim()}` : 'Add the part'}
            done={`${added.name.trim() || 'The part'} is added.`}
            onDone={() => setAdded(NEW_PART)}
          >
            {(errors) => <PartForm part={added} onChange={setAdded} errors={errors} prefer={prefer} />}
          </ActForm>
        </Fold>
      ) : null}
    </>
  );
}

function PartLine({ part }: { part: PartRow }) {
  return (
    <p className={styles.part}>
      <b>{part.typed.name}</b>
      <span className={styles.soft}>{part.says}</span>
    </p>
  );
}

function PartFold({ jobId, part, prefer }: { jobId: number; part: PartRow; prefer: UnitSystem }) {
  const [typed, setTyped] = useState(part.typed);
  const removal = useAct(removePartAction);
  const say = useNotice();
  const { name } = part.typed;
  async function remove() {
    const answered = await removal.run({ partId: part.id });
    if (answered.ok) say({ words: `${name} is taken off. The history can bring it back.` });
  }
  return (
    <Fold title={name} now={part.says} group="part">
      <ActForm
        action={changePartAction}
        input={{ ...typed, partId: part.id }}
        words={`Change ${name}`}
        done={`${name} is changed.`}
      >
        {(errors) => <PartForm part={typed} onChange={setTyped} errors={errors} prefer={prefer} />}
      </ActForm>
      {removal.problem ? (
        <PlainError happened={removal.problem.what} kept={removal.problem.kept} toDo={removal.problem.todo} />
      ) : null}
      <div className={styles.keys}>
        <LinkKey variant="ghost" href={`/jobs/${jobId}/needs?part=${part.id}#add`}>
          Write what {name} takes
        </LinkKey>
        <Key variant="ghost" pending={removal.pending} pendingWords="Writing" onClick={() => void remove()}>
          Take {name} off the job
        </Key>
      </div>
    </Fold>
  );
}
