'use client';

import { useState } from 'react';
import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { ShelfRibbon } from '@/app/_ui/rule/shelf-ribbon';
import { Section } from '@/app/_ui/section';
import { ReasonList } from '@/app/_ui/verdict/reason-list';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { VerdictPanel } from '@/app/_ui/verdict/verdict-panel';
import { VERDICT_WORDS } from '@/app/_ui/verdict/word';
import { confirmDatesHref } from '@/app/(shop)/_parts/stock/confirm-dates-href';
import { sayBasis } from '@/app/(shop)/_parts/stock/ribbon-of';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import { ContainerFacts } from '@/app/(shop)/pull/_ui/container-facts';
import { headline } from '@/app/(shop)/pull/_ui/headline';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { sayGoal } from '@/app/(shop)/pull/_ui/pull-goal';
import { ribbonRange } from '@/app/(shop)/pull/_ui/ribbon-range';
import { Safety } from '@/app/(shop)/pull/_ui/safety';
import { sayLeft } from '@/app/(shop)/pull/_ui/say-amount';
import { sayElsewhere } from '@/app/(shop)/pull/_ui/say-elsewhere';
import { holdPages, sayHeldBecause, sayNever } from '@/app/(shop)/pull/_ui/say-hold';
import { sayMixedWith } from '@/app/(shop)/pull/_ui/say-mixed-with';
import { sayGoodTo, TakeInstead } from '@/app/(shop)/pull/_ui/take-instead';
import { Why } from '@/app/(shop)/pull/_ui/why';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { sayReason } from '@/shared/shelf-life/say-reason';
import { sayVerdict } from '@/shared/shelf-life/say-verdict';
import type { Weight } from '@/shared/shelf-life/types/reason';
import { whatToDo } from '@/shared/shelf-life/what-to-do';

export type ContainerAnswerProps = {
  bench: Bench;
  answer: Extract<PullReply, { kind: 'container' }>;
  /** It came just now, so it stamps and is said aloud. */
  fresh: boolean;
  /** The book cannot be reached: the keys that take are put away until it can. */
  stale: boolean;
  onAskAgain: () => void;
};

/** A note weighs nothing on the verdict, so it carries the mark of the word it stands under at its lightest. */
const WORD: Record<Weight, 'use' | 'care' | 'stop'> = { stop: 'stop', care: 'care', note: 'use' };

/** The answer across the whole screen: the word, the thing, the rule, every reason, and what to do. */
export function ContainerAnswer({ bench, answer, fresh, stale, onAskAgain }: ContainerAnswerProps) {
  const [why, setWhy] = useState(false);
  const { verdict, line, today } = answer;
  const { day, units, dateOrder: order, draft, patch } = bench;
  const context = { today, order, prefer: units, sayAmount: (amount: number) => sayLeft(amount, line.unit, units) };
  const better = verdict.instead?.containers[0];
  const never =
    verdict.override !== 'not-needed' && !verdict.override.allowed ? sayNever(verdict.override.because) : undefined;
  const releases = never?.held ? holdPages(verdict.reasons, line) : [];
  const confirmHref = confirmDatesHref(verdict.reasons, line.lotId);
  const mayOverride = verdict.override !== 'not-needed' && verdict.override.allowed;
  const goal = sayGoal(bench.goal);
  const other = better && !(verdict.instead?.withThis ?? 0) ? better : undefined;
  /** Good or not, none of it is this job's to take. */
  const nothingFree = answer.elsewhere !== null && answer.elsewhere.free <= 0;
  const takesThis = !stale && verdict.word !== 'stop' && !nothingFree;
  /** Two keys stand beside the main one; the way on to the next scan then stands above them. */
  const full = !stale && other !== undefined && (mayOverride || never?.held || takesThis);
  const { opened } = line.candidate.container;

  return (
    <div className={styles.stage}>
      <div className={styles.wide}>
        <div>
          <VerdictPanel
            word={nothingFree ? 'stop' : verdict.word}
            headline={headline(nothingFree ? 'All of it is promised to another job.' : sayVerdict(verdict, context))}
            fresh={fresh}
          />
          <ContainerFacts line={line} units={units} />
          {answer.elsewhere ? (
            <p className={styles.mixed}>
              <VerdictMark word={nothingFree ? 'stop' : 'care'} size={22} />
              <span>{sayElsewhere(answer.elsewhere, { today, order, prefer: units, unit: line.unit })}</span>
            </p>
          ) : null}
          {answer.mixedWith ? (
            <p className={styles.mixed}>
              <VerdictMark word={answer.mixedWith.verdict.word} size={22} />
              <span>
                <span className="unseen">{VERDICT_WORDS[answer.mixedWith.verdict.word]}: </span>
                {sayMixedWith(answer.mixedWith, { today, order, prefer: units })}
              </span>
            </p>
          ) : null}
          <Section>
            <ShelfRibbon
              {...ribbonRange(today, day, verdict.governing?.lastGoodDay)}
              today={today}
              order={order}
              useDay={{ date: day, label: bench.goal.name && day === bench.goal.day ? 'day of use' : 'used' }}
              openedOn={opened?.on}
              limits={verdict.limits
                .filter((limit) => limit.effective)
                .map((limit) => ({
                  lastGoodDay: limit.lastGoodDay,
                  label: sayBasis(limit, { today, order }),
                  governing:
                    limit.basis === verdict.governing?.basis && limit.lastGoodDay === verdict.governing.lastGoodDay,
                }))}
            />
          </Section>
        </div>
        <div>
          {verdict.reasons.length > 0 ? (
            <Section>
              <ReasonList
                reasons={verdict.reasons.map((reason) => ({
                  id: JSON.stringify(reason),
                  word: WORD[reason.weight],
                  sentence: `${sayReason(reason, context)}${sayHeldBecause(reason, answer)}`,
                  toDo: whatToDo(reason, { materialKind: line.kind, prefer: units }),
                }))}
              />
              {never ? (
                <p className={styles.never}>
                  {never.words}{' '}
                  {releases.map(({ href, words }, index) => (
                    <span key={href}>
                      {index > 0 ? ', ' : ''}
                      <a href={href}>{words}</a>
                    </span>
                  ))}
                </p>
              ) : null}
              {confirmHref ? (
                <div className={styles.quietRow}>
                  <LinkKey variant="ghost" href={confirmHref}>
                    Confirm its dates
                  </LinkKey>
                </div>
              ) : null}
            </Section>
          ) : null}
          {verdict.instead && (verdict.instead.containers.length > 1 || !better) ? (
            <Section title={verdict.word === 'stop' ? 'Take instead' : 'Take as well'}>
              <TakeInstead
                suggestion={verdict.instead}
                today={today}
                order={order}
                sayAmount={draft.asked === undefined ? undefined : context.sayAmount}
                onTake={(take) => bench.turnTo(take.label)}
              />
            </Section>
          ) : null}
          <div className={styles.quietRow}>
            <button type="button" className={styles.quiet} onClick={bench.changeDay}>
              Another day of use
            </button>
            {line.candidate.policy.system ? (
              <button type="button" className={styles.quiet} onClick={() => patch({ step: 'mixed' })}>
                {answer.pairedWith ? `Mixed with ${answer.pairedWith.label}` : 'Mixed with…'}
              </button>
            ) : null}
            {full ? (
              <button type="button" className={styles.quiet} onClick={bench.scanNext}>
                Scan another
              </button>
            ) : null}
          </div>
          {why ? <Why answer={answer} order={order} /> : null}
          <Safety kind={line.kind} hazards={answer.hazards} safetySheet={answer.safetySheet} />
        </div>
      </div>
      <KeyBar>
        {stale ? (
          <Key onClick={onAskAgain}>Ask again</Key>
        ) : other ? (
          <Key onClick={() => bench.turnTo(other.label)}>
            Take {printOwnLabel(other.label as OwnLabelCode)}, {sayGoodTo(other, { today, order })}
          </Key>
        ) : takesThis ? (
          <Key onClick={() => patch({ step: 'amount', overriding: false })}>Take some for {goal}</Key>
        ) : (
          <Key onClick={bench.scanNext}>Scan another</Key>
        )}
        {takesThis && other ? (
          <Key variant="ghost" onClick={() => patch({ step: 'amount', overriding: false })}>
            Take some of this
          </Key>
        ) : null}
        <Key variant="ghost" aria-expanded={why} onClick={() => setWhy(!why)}>
          {why ? 'Hide why' : 'Why'}
        </Key>
        {full || (!stale && !takesThis && !other) ? null : (
          <Key variant="ghost" onClick={bench.scanNext}>
            Scan another
          </Key>
        )}
        {!stale && mayOverride ? (
          <Key variant="stop" onClick={() => patch({ step: 'pour', overriding: true })}>
            Use anyway
          </Key>
        ) : null}
        {releases.map(({ href, key }) => (
          <LinkKey key={href} variant="ghost" href={href}>
            {key}
          </LinkKey>
        ))}
      </KeyBar>
    </div>
  );
}
