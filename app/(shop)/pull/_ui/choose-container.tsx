'use client';

import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { Code } from '@/app/_ui/code';
import { Key, KeyBar, LinkKey } from '@/app/_ui/keys';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { VERDICT_WORDS } from '@/app/_ui/verdict/word';
import type { Bench } from '@/app/(shop)/pull/_ui/bench';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { sayLeft } from '@/app/(shop)/pull/_ui/say-amount';
import { sayDate } from '@/shared/calendar/say-date';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { sayVerdict } from '@/shared/shelf-life/say-verdict';

/** A product's bar code was scanned: which of its containers is it? The best one stands first. */
export function ChooseContainer({ bench, reply }: { bench: Bench; reply: Extract<PullReply, { kind: 'choose' }> }) {
  const { today, options } = reply;
  const { units } = bench;
  return (
    <div className={styles.stage}>
      <div className={styles.narrow}>
        <h2 className={styles.question}>{options.length === 0 ? `No ${reply.product} is left` : 'Which one is it?'}</h2>
        <p className={styles.soft}>
          {options.length === 0
            ? 'The book has no container of it with anything in it. If there is one in your hand, take it in under Arrive, or weigh it on its page.'
            : `The bar code says ${reply.product}${reply.lot ? `, lot ${reply.lot}` : ''}, but not which container. Match the label on it.`}
        </p>
        <ul className={styles.choices} aria-label={`Containers of ${reply.product}`}>
          {options.map(({ line, verdict }) => (
            <li key={line.label}>
              <button type="button" className={styles.choice} onClick={() => bench.turnTo(line.label)}>
                <span className={styles.choiceName}>
                  <VerdictMark word={verdict.word} size={26} />
                  <span className="unseen">{VERDICT_WORDS[verdict.word]}: </span>{' '}
                  <Code>{printOwnLabel(line.label)}</Code>
                </span>
                <span className={styles.choiceDay}>{sayLeft(line.left, line.unit, units)}</span>
                <span>
                  {sayVerdict(verdict, {
                    today,
                    order: bench.dateOrder,
                    prefer: units,
                    sayAmount: (amount) => sayLeft(amount, line.unit, units),
                  })}
                </span>
                <span className={styles.soft}>
                  {line.candidate.container.opened
                    ? `opened ${sayDate(line.candidate.container.opened.on, { order: bench.dateOrder, today })}`
                    : 'sealed'}
                </span>
                <span className={styles.soft}>
                  {line.lotCode ? `lot ${line.lotCode}` : 'no lot'}
                  {line.place ? `, ${line.place}` : ''}
                </span>
              </button>
            </li>
          ))}
        </ul>
      </div>
      <KeyBar>
        <Key variant={options.length === 0 ? 'main' : 'ghost'} onClick={bench.scanNext}>
          Scan another
        </Key>
        {options.length === 0 ? (
          <LinkKey variant="ghost" href="/arrive">
            Take it in
          </LinkKey>
        ) : null}
      </KeyBar>
    </div>
  );
}
