'use client';

import Link from 'next/link';
import { useState } from 'react';
import { useAct } from '@/app/_ui/act/use-act';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, LinkKey } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { reverseAction } from '@/app/(shop)/_parts/history/actions';
import styles from '@/app/(shop)/pieces/_ui/pack.module.css';
import { takeBoardsAction } from '@/app/(shop)/pieces/actions';
import type { PackRow } from '@/app/(shop)/pieces/pack-view';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';

type Taken = { entryId: number; labels: string[] };

/** The tally of a pack, each board drawn to one scale beside its figures; those that are chosen come out with labels of their own. */
export function PackTable({ label, rows, gone }: { label: string; rows: readonly PackRow[]; gone: boolean }) {
  const [chosen, setChosen] = useState<ReadonlySet<number>>(new Set());
  const [why, setWhy] = useState('');
  const [taken, setTaken] = useState<Taken>();
  const { run, pending, problem } = useAct(takeBoardsAction);
  const here = rows.filter((row) => !row.taken);
  const ids = here.flatMap((row) => (chosen.has(row.id) ? row.id : []));
  const longestMm = Math.max(...rows.map((row) => row.lengthMm));

  function flip(id: number) {
    setChosen((before) => {
      const next = new Set(before);
      if (!next.delete(id)) next.add(id);
      return next;
    });
  }

  async function take() {
    const answer = await run({ label, boardIds: ids, why });
    if (!answer.ok) return;
    setTaken({ entryId: answer.answer.entryId, labels: answer.answer.pieces.map((piece) => piece.label) });
    setChosen(new Set());
    setWhy('');
  }

  const all = ids.length === here.length;
  const many = `${ids.length} board${ids.length === 1 ? '' : 's'}`;
  return (
    <>
      {taken ? <TakenOut taken={taken} onPutBack={() => setTaken(undefined)} /> : null}
      <ul className={styles.boards} aria-label="Tally of the pack">
        {rows.map((row) => (
          <li key={row.id} className={styles.board} data-taken={row.taken || undefined}>
            <label className={styles.choose}>
              <input
                type="checkbox"
                checked={chosen.has(row.id)}
                disabled={row.taken || gone}
                onChange={() => flip(row.id)}
              />
              <span className={styles.words}>
                <span className={styles.boardSize}>
                  <span className={styles.nr}>{row.nr}</span> {row.size}
                </span>
                <span className={styles.soft}>
                  {[row.taken ? 'taken out' : '', row.boardFeet, row.cost].filter(Boolean).join(' · ')}
                </span>
              </span>
              <span
                className={styles.bar}
                aria-hidden="true"
                style={{
                  width: `${(row.lengthMm / longestMm) * 100}%`,
                  aspectRatio: `${row.lengthMm} / ${row.widthMm}`,
                }}
              />
            </label>
          </li>
        ))}
      </ul>
      {gone || here.length === 0 ? null : (
        <div className={styles.take}>
          <Key variant="ghost" onClick={() => setChosen(new Set(all ? [] : here.map((row) => row.id)))}>
            {all ? 'Choose none' : `Choose all ${here.length}`}
          </Key>
          {ids.length > 0 ? (
            <>
              <TextField label="What for" optional maxLength={200} value={why} onChange={setWhy} />
              {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
              <Key onClick={take} pending={pending} pendingWords="Writing">
                {`Take ${many} out of the pack`}
              </Key>
            </>
          ) : (
            <p className={styles.soft}>Choose boards to take them out: each gets a label and its share of the cost.</p>
          )}
        </div>
      )}
    </>
  );
}

function TakenOut({ taken, onPutBack }: { taken: Taken; onPutBack: () => void }) {
  const { run, pending, problem } = useAct(reverseAction);
  const { labels, entryId } = taken;
  return (
    <div className={styles.taken} role="status">
      <p>{labels.length === 1 ? 'It is a board of its own now:' : `${labels.length} are boards of their own now:`}</p>
      <ul className={styles.labels}>
        {labels.map((code) => (
          <li key={code}>
            <Link href={`/pieces/${code}`}>{printOwnLabel(code as OwnLabelCode)}</Link>
          </li>
        ))}
      </ul>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <div className={styles.takenKeys}>
        <LinkKey href={`/labels?codes=${labels.join(',')}`}>
          {labels.length === 1 ? 'Print its label' : 'Print their labels'}
        </LinkKey>
        <Key
          variant="ghost"
          pending={pending}
          pendingWords="Putting back"
          onClick={async () => {
            const answer = await run({ entryId, why: 'Taken out by mistake' });
            if (answer.ok) onPutBack();
          }}
        >
          Put back into the pack
        </Key>
      </div>
    </div>
  );
}
