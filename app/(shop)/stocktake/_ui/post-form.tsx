'use client';

import { useRouter } from 'next/navigation';
import { type FormEvent, useRef, useState } from 'react';
import type { WalkThing } from '@/app/_server/stocktake/walk-of';
import { useShowTrouble } from '@/app/_ui/act/show-trouble';
import { useAct } from '@/app/_ui/act/use-act';
import { Empty } from '@/app/_ui/empty';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/stocktake/_ui/stocktake.module.css';
import { WalkRows } from '@/app/(shop)/stocktake/_ui/walk-rows';
import { postAction } from '@/app/(shop)/stocktake/actions';
import { DIFFERENCES, sayChoice } from '@/app/(shop)/stocktake/say-walk';
import type { WalkChoice } from '@/shared/stocktake/choices-of';
import type { UnitSystem } from '@/shared/units/unit-system';

interface PostFormProps {
  stocktake: number;
  place: string;
  things: readonly WalkThing[];
  /** How many are as the book has them. */
  here: number;
  anySeen: boolean;
  /** Codes that mean no thing. */
  codes: number;
  asOf: number;
  prefer: UnitSystem;
}

/** Every difference with its choice, and one reason for all of them. */
export function PostForm({ stocktake, place, things, here, anySeen, codes, asOf, prefer }: PostFormProps) {
  const router = useRouter();
  const form = useRef<HTMLFormElement>(null);
  const [chosen, setChosen] = useState<Readonly<Record<number, WalkChoice>>>({});
  const [why, setWhy] = useState('');
  const { run, pending, problem } = useAct(postAction);
  useShowTrouble(form, problem);
  const choiceOf = (thing: WalkThing): WalkChoice => chosen[thing.stockId] ?? thing.choices[0] ?? 'leave';
  const chooseAll = (lines: readonly WalkThing[], choice: WalkChoice) =>
    setChosen((before) => ({ ...before, ...Object.fromEntries(lines.map(({ stockId }) => [stockId, choice])) }));
  const acts = things.filter((thing) => choiceOf(thing) !== 'leave').length;

  const post = async (submit: FormEvent) => {
    submit.preventDefault();
    if (pending) return;
    const choices = things.map((thing) => ({ stockId: thing.stockId, choice: choiceOf(thing), delta: thing.delta }));
    const answer = await run({ stocktake, why, asOf, choices });
    if (answer.ok) router.push(`/stocktake/${stocktake}`);
  };

  if (!anySeen && things.length > 0) {
    return (
      <Empty
        title="Nothing was seen on this walk yet."
        toDo="Comparing now would write off everything that stands here. Scan what is there first."
      >
        <LinkKey href={`/stocktake/${stocktake}`}>Go on with the walk</LinkKey>
      </Empty>
    );
  }
  return (
    <form ref={form} className={styles.post} noValidate onSubmit={post}>
      <p>
        {here} {here === 1 ? 'thing is' : 'things are'} as the book has {here === 1 ? 'it' : 'them'}.{' '}
        {things.length === 0
          ? 'Nothing differs.'
          : `${things.length} ${things.length === 1 ? 'differs' : 'differ'}: choose what to do about each.`}
        {codes > 0 ? ` ${codes} ${codes === 1 ? 'code stays' : 'codes stay'} with this stocktake as read.` : ''}
      </p>
      {DIFFERENCES.map(({ status, title }) => {
        const lines = things.filter((thing) => thing.status === status);
        if (lines.length === 0) return null;
        return (
          <Section key={status} title={title} aside={`${lines.length}`}>
            {status === 'missing' && lines.length > 1 ? (
              <div className={styles.keys}>
                <Key variant="ghost" onClick={() => chooseAll(lines, 'gone')}>
                  Write all {lines.length} off
                </Key>
                <Key variant="ghost" onClick={() => chooseAll(lines, 'leave')}>
                  Leave them all
                </Key>
              </div>
            ) : null}
            <WalkRows
              things={lines}
              prefer={prefer}
              label={title}
              most={1000}
              beside={(thing) =>
                thing.choices.length < 2 ? null : (
                  <ChoiceChips
                    label="What to do"
                    options={thing.choices.map((choice) => ({
                      value: choice,
                      label: sayChoice(choice, thing, prefer),
                    }))}
                    value={choiceOf(thing)}
                    onChange={(choice) => setChosen((before) => ({ ...before, [thing.stockId]: choice as WalkChoice }))}
                  />
                )
              }
            />
          </Section>
        );
      })}
      <Section title="Post it">
        {acts > 0 ? (
          <TextField
            label="Reason"
            hint="Stands beside the entry: why what is gone is gone, as far as you know."
            value={why}
            onChange={setWhy}
            maxLength={500}
            error={problem?.fields?.why}
          />
        ) : null}
        {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      </Section>
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Writing into the book">
          {acts === 0
            ? `Close the stocktake of ${place}: nothing is changed`
            : `Post ${acts} ${acts === 1 ? 'difference' : 'differences'}, in one entry`}
        </Key>
        <LinkKey href={`/stocktake/${stocktake}`} variant="ghost">
          Look again
        </LinkKey>
      </KeyBar>
    </form>
  );
}
