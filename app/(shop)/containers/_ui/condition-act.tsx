'use client';

import { useState } from 'react';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import styles from '@/app/(shop)/_parts/acts/acts.module.css';
import { WhyField } from '@/app/(shop)/_parts/acts/why-field';
import { CONDITION_WORDS } from '@/app/(shop)/_parts/condition-words';
import { conditionAction } from '@/app/(shop)/containers/actions';
import type { AdviceContext } from '@/shared/shelf-life/advice-on-condition';
import { CONDITIONS, type Condition } from '@/shared/shelf-life/types/container-facts';
import { whatToDo } from '@/shared/shelf-life/what-to-do';

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Notes what is seen in a container, all of it as it is now, with what to do about each. */
export function ConditionAct({
  label,
  seen,
  freezingRuins,
  about,
}: {
  label: string;
  seen: readonly Condition[];
  freezingRuins: boolean;
  /** What the advice depends on. */
  about: AdviceContext;
}) {
  const [conditions, setConditions] = useState<Condition[]>([...seen]);
  const [why, setWhy] = useState('');
  const cleared = seen.some((each) => !conditions.includes(each));
  const advice = conditions.flatMap((condition) => adviceFor(condition, freezingRuins, about) ?? []);
  return (
    <Fold
      group="act"
      title="Note what you see in it"
      now={seen.length ? seen.map((each) => CONDITION_WORDS[each]).join(', ') : 'nothing noted'}
    >
      <ActForm
        action={conditionAction}
        input={{ label, conditions, why }}
        words={conditions.length === 0 ? 'Write that nothing is wrong' : 'Write what is seen'}
        done="What is seen in it is in the book."
        onDone={() => setWhy('')}
      >
        {(errors) => (
          <>
            <CheckChips
              label="What is seen in it now?"
              options={CONDITIONS.map((value) => ({ value, label: capital(CONDITION_WORDS[value]) }))}
              values={conditions}
              onChange={setConditions}
              error={errors.conditions}
            />
            {advice.length > 0 ? (
              <ul className={styles.advice} aria-label="What to do" aria-live="polite">
                {advice.map(({ condition, says }) => (
                  <li key={condition}>
                    <b>{capital(CONDITION_WORDS[condition])}.</b> {says}
                  </li>
                ))}
              </ul>
            ) : null}
            <WhyField
              label={cleared ? 'What was done about it?' : 'How it came about'}
              hint={cleared ? 'Taking a note back needs its reason: warmed, stirred, looked at again.' : undefined}
              optional={!cleared}
              value={why}
              onChange={setWhy}
              error={errors.why}
            />
          </>
        )}
      </ActForm>
    </Fold>
  );
}

function adviceFor(
  condition: Condition,
  freezingRuins: boolean,
  about: AdviceContext,
): { condition: Condition; says: string } | undefined {
  const says =
    condition === 'frozen'
      ? whatToDo(
          freezingRuins ? { code: 'frozen-ruined', weight: 'stop' } : { code: 'frozen-thaw', weight: 'care' },
          about,
        )
      : condition === 'gelled' || condition === 'skinned-through'
        ? whatToDo({ code: condition, weight: 'stop' }, about)
        : whatToDo({ code: condition, weight: 'care' }, about);
  return says ? { condition, says } : undefined;
}
