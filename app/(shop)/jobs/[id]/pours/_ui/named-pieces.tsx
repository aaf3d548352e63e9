'use client';

import Link from 'next/link';
import type { NamedPiece } from '@/app/_server/pours/named-pieces';
import { useAct } from '@/app/_ui/act/use-act';
import { Code } from '@/app/_ui/code';
import { Key } from '@/app/_ui/keys';
import { useNotice } from '@/app/_ui/notice/notice-provider';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { VerdictPill } from '@/app/_ui/verdict/verdict-pill';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { PairWarning } from '@/app/(shop)/pieces/_ui/pair-warning';
import { giveAction } from '@/app/(shop)/pieces/actions';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printLength } from '@/shared/units/print-length';
import type { UnitSystem } from '@/shared/units/unit-system';

interface NamedPiecesProps {
  pieces: readonly NamedPiece[];
  jobId: number;
  job: string;
  units: UnitSystem;
}

/** The wood a pour is planned in, how it stands to the job, and the key that promises what is free to it. */
export function NamedPieces({ pieces, jobId, job, units }: NamedPiecesProps) {
  const { run, pending, problem } = useAct(giveAction);
  const say = useNotice();
  const free = pieces.filter(({ stands, isHeld }) => stands.is === 'free' && !isHeld);

  const lost = pieces.filter(({ stands }) => stands.is === 'elsewhere');

  async function promise() {
    for (const { label } of free) {
      // What was promised before one of them is refused stays promised: each is an entry of its own.
      const answered = await run({ label, act: 'promise', jobId });
      if (!answered.ok) return giveFeedback('error');
    }
    say({ words: `${sayLabels(free)} ${free.length === 1 ? 'is' : 'are'} promised to ${job}.` });
  }

  return (
    <div className={styles.named}>
      <ul className={styles.list} aria-label="The wood it is poured in">
        {pieces.map((piece) => (
          <li key={piece.label} className={styles.namedPiece}>
            <span className={styles.namedTitle}>
              <Link href={`/pieces/${piece.label}`}>{piece.title}</Link>
              <Code>{printOwnLabel(piece.label)}</Code>
            </span>
            <span className={styles.soft}>
              {printLength(piece.thickness, { prefer: units, style: 'inches' })} thick
            </span>
            <Standing piece={piece} job={job} />
          </li>
        ))}
      </ul>
      {free
        .filter(({ pairedWith }) => !free.some(({ label }) => label === pairedWith?.label))
        .map((piece) => (
          <PairWarning key={piece.label} line={piece} what="give" />
        ))}
      {lost.length > 0 ? (
        <p className={styles.defer}>
          {job} does not have {sayLabels(lost)}. Free {lost.length > 1 ? 'them on their pages' : 'it on its page'} first
          if the other job can spare {lost.length > 1 ? 'them' : 'it'}, or search for other wood.
        </p>
      ) : null}
      {problem ? <PlainError happened={problem.what} kept={KEPT} toDo={problem.todo} /> : null}
      {free.length > 0 ? (
        <div className={styles.rowKeys}>
          <Key variant="ghost" pending={pending} pendingWords="Writing into the book" onClick={() => void promise()}>
            Promise {free.length === 2 ? 'both' : sayLabels(free)} to {job}
          </Key>
        </div>
      ) : null}
    </div>
  );
}

const KEPT = 'What you typed is still here, and what was promised before stays promised.';

const sayLabels = (pieces: readonly NamedPiece[]) => pieces.map(({ label }) => printOwnLabel(label)).join(' and ');

function Standing({ piece: { stands, isHeld }, job }: { piece: NamedPiece; job: string }) {
  if (stands.is === 'gone') return <VerdictPill word="stop">not on hand any more</VerdictPill>;
  if (stands.is === 'elsewhere') return <VerdictPill word="stop">promised to {stands.job.name}</VerdictPill>;
  if (isHeld) return <VerdictPill word="stop">held, look at its page</VerdictPill>;
  if (stands.is === 'its-own') return <VerdictPill word="use">promised to {job}</VerdictPill>;
  return <VerdictPill word="care">promised to nobody yet</VerdictPill>;
}
