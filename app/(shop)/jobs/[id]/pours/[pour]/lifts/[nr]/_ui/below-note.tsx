import type { SaidOfBelow } from '@/app/_server/pours/join-below';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';
import { sayBelow } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/say-below';
import { sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { type JoinNow, joinAt, type LiftBelow } from '@/shared/pour/join-at';

export type BelowNoteProps = {
  below: LiftBelow;
  /** The lift that goes on it. */
  nr: number;
  /** Milliseconds since 1970. */
  now: number;
  /** What was said of it and stands in the book, and what is said on this card. */
  before: SaidOfBelow;
  said: SaidOfBelow;
  onSay: (said: SaidOfBelow) => void;
  /** Where something was weighed without saying it. */
  isAsked: boolean;
};

const WORD: Record<JoinNow, 'use' | 'care' | 'stop'> = {
  'too-early': 'stop',
  'while-tacky': 'use',
  'sand-first': 'care',
};

/** Whether the lift below may be poured on now: tacky, too early, or to be sanded, which is ticked here. */
export function BelowNote({ below, nr, now, before, said, onSay, isAsked }: BelowNoteProps) {
  const { joins } = joinAt(below, now);
  return (
    <section className={styles.below} aria-label={`${sayLift(below.nr)} below`}>
      <VerdictMark word={WORD[joins]} size={24} />
      <div>
        <p>{sayBelow(below, now)}</p>
        {joins === 'sand-first' ? (
          before.sanded ? (
            <p>It was sanded, says the book.</p>
          ) : (
            <CheckChips
              label={`Before ${sayLift(nr).toLowerCase()}`}
              options={[{ value: 'sanded', label: `${sayLift(below.nr)} is sanded and wiped clean` }]}
              values={said.sanded ? ['sanded'] : []}
              onChange={(values) => onSay({ ...said, sanded: values.length > 0 })}
              error={isAsked && !said.sanded ? 'Tick it once it is done: nothing is weighed on it before.' : undefined}
            />
          )
        ) : null}
        {joins === 'too-early' ? (
          before.early ? (
            <p>Poured on all the same: {before.early}</p>
          ) : (
            <TextField
              label="Why is it poured on so soon?"
              hint="Empty, the card waits. A reason stays with the lift."
              value={said.early ?? ''}
              onChange={(early) => onSay({ ...said, early })}
              maxLength={1000}
              error={isAsked && !said.early?.trim() ? 'Wait, or write why not.' : undefined}
            />
          )
        ) : null}
      </div>
    </section>
  );
}
