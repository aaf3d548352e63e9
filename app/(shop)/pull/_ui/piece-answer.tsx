'use client';

import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import type { GivenPiece } from '@/app/_server/stock/give-piece';
import { useAct } from '@/app/_ui/act/use-act';
import { Code } from '@/app/_ui/code';
import { Key, KeyBar } from '@/app/_ui/keys';
import type { PieceMark } from '@/app/_ui/piece/piece-mark';
import { PieceDrawing } from '@/app/_ui/piece-drawing';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import { SlabDrawing } from '@/app/_ui/slab/slab-drawing';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { headline } from '@/app/(shop)/pull/_ui/headline';
import { ProblemNote } from '@/app/(shop)/pull/_ui/problem-note';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { pieceAction } from '@/app/(shop)/pull/actions';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { sayPieceReason } from '@/shared/wood/say-piece-reason';
import { sayPieceFace, sayPieceSize } from '@/shared/wood/say-piece-size';

type PieceReply = Extract<PullReply, { kind: 'piece' }>;
export type PieceAct = 'promise' | 'take' | 'free';

export type PieceAnswerProps = {
  bench: Bench;
  reply: PieceReply;
  fresh: boolean;
  stale: boolean;
  onAskAgain: () => void;
  onGiven: (given: GivenPiece, act: PieceAct) => void;
};

const MM = 1_000_000;

/** A slab, board, sheet or offcut: may it go to the job, and the keys that promise it, take it or free it. */
export function PieceAnswer({ bench, reply, fresh, stale, onAskAgain, onGiven }: PieceAnswerProps) {
  const { run, pending, problem } = useAct(pieceAction);
  const { line, verdict, job } = reply;
  const { units } = bench;
  const { promisedTo, inStock, flags } = line.facts;
  const own = promisedTo !== undefined && promisedTo.id === job?.id;
  const said = verdict.reasons.map((reason) => ({ reason, ...sayPieceReason(reason) }));
  const size = sayPieceSize(line, { prefer: units });
  const name = `${line.species} ${line.form}`;

  async function give(act: PieceAct) {
    const answered = await run({ label: line.label, act, jobId: job?.id });
    if (answered.ok) return onGiven(answered.answer, act);
    giveFeedback('error');
  }

  const mayGo = job !== null && verdict.word !== 'stop';
  return (
    <div className={styles.stage}>
      <div className={styles.wide}>
        <div>
          <VerdictPanel
            word={verdict.word}
            fresh={fresh}
            headline={headline(said[0]?.says ?? (own ? `Promised to ${job?.name}.` : 'Nothing is in the way.'))}
          />
          <div className={styles.thing}>
            <div className={styles.thingWords}>
              <p className={styles.thingName}>{name}</p>
              <p className={styles.codes}>
                <Code>{printOwnLabel(line.label)}</Code>
                {line.flitch ? (
                  <span>
                    {line.flitchNumber === null ? '' : `no. ${line.flitchNumber} of `}flitch {line.flitch}
                  </span>
                ) : null}
              </p>
              <p className={styles.soft}>
                {size}
                {line.place ? `, ${line.place}` : ''}
              </p>
            </div>
          </div>
          {line.shape ? (
            <SlabDrawing
              outline={line.shape.outline}
              marks={line.marks}
              live={{ left: flags.includes('live-edge-left'), right: flags.includes('live-edge-right') }}
              label={`${name}, ${size}, as it was measured`}
            />
          ) : (
            <PieceDrawing
              name={line.label}
              shape={{
                lengthMm: line.lengthNm / MM,
                widthsMm: { start: line.widthStartNm / MM, middle: line.widthMiddleNm / MM, end: line.widthEndNm / MM },
                liveEdges: { left: flags.includes('live-edge-left'), right: flags.includes('live-edge-right') },
              }}
              marks={marksOf(flags, line.lengthNm / MM)}
              words={sayPieceFace(line, { prefer: units })}
              label={`${name}, ${size}`}
            />
          )}
        </div>
        <div>
          {said.length > 0 ? (
            <Section>
              <ReasonList
                reasons={said.map(({ reason, says, todo }) => ({
                  id: JSON.stringify(reason),
                  word: reason.weight,
                  sentence: says,
                  toDo: todo,
                }))}
              />
            </Section>
          ) : null}
          <Section>
            {own ? <p>It is promised to {job?.name}.</p> : null}
            {job === null ? (
              <p>
                Wood is promised to a job or taken for one, so that two jobs never count on the same slab. Choose the
                job.
              </p>
            ) : null}
            {line.form === 'slab' ? (
              <p className={styles.soft}>A slab is heavy: lift it with two, or with a hoist.</p>
            ) : null}
          </Section>
          <ProblemNote problem={problem} />
        </div>
      </div>
      <KeyBar>
        {stale ? (
          <Key onClick={onAskAgain}>Ask again</Key>
        ) : mayGo ? (
          <Key pending={pending} pendingWords="Writing into the book" onClick={() => void give('take')}>
            Take it for {job.name}
          </Key>
        ) : job === null && inStock ? (
          <Key onClick={bench.changeGoal}>Choose the job</Key>
        ) : (
          <Key onClick={bench.scanNext}>Scan another</Key>
        )}
        {!stale && mayGo && !own ? (
          <Key variant="ghost" pending={pending} onClick={() => void give('promise')}>
            Promise it to {job.name}
          </Key>
        ) : null}
        {!stale && promisedTo && inStock ? (
          <Key variant="ghost" pending={pending} onClick={() => void give('free')}>
            Free it from {promisedTo.name}
          </Key>
        ) : null}
        {stale || mayGo || (job === null && inStock) ? (
          <Key variant="ghost" onClick={bench.scanNext}>
            Scan another
          </Key>
        ) : null}
      </KeyBar>
    </div>
  );
}

/** What it was marked with when it arrived, drawn where such a thing usually is: its true place is not measured. */
function marksOf(flags: readonly string[], lengthMm: number): PieceMark[] {
  return [
    ...(flags.includes('broken') ? [{ kind: 'break' as const, atMm: lengthMm * 0.62 }] : []),
    ...(flags.includes('strapped') ? [0.2, 0.8].map((at) => ({ kind: 'strap' as const, atMm: lengthMm * at })) : []),
    ...(flags.includes('checked') ? [{ kind: 'check' as const, end: 'end' as const, lengthMm: lengthMm * 0.12 }] : []),
  ];
}
