import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import { NO_JOB_WORDS } from '@/app/(shop)/pull/_ui/pull-goal';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { sayLimit } from '@/shared/shelf-life/say-limit';
import type { Policy } from '@/shared/shelf-life/types/policy';

const KEEPS: Record<Policy['kind'], string> = {
  fixed: 'Nothing extends its limits.',
  inspectable: 'A passed inspection can carry it past a limit, until the day it names.',
  keeps: 'No limit is stated for it; what is printed on the container still counts.',
};

/** The inputs and the rule behind the verdict. */
export function Why({ answer, order }: { answer: Extract<PullReply, { kind: 'container' }>; order: DateOrder }) {
  const { verdict, line, today, purpose, pairedWith, testPour } = answer;
  const { governing, limits, daysLeft, dayOfUse, judgedFor } = verdict;
  const { policy } = line.candidate;
  const say = (day: typeof dayOfUse) => sayDate(day, { order, today });
  return (
    <Section title="Why">
      {limits.length === 0 ? <p>No limit is known for this container.</p> : null}
      <ul className={styles.limits} aria-label="Limits">
        {limits.map((limit) => (
          <li
            key={`${limit.basis} ${limit.lastGoodDay} ${limit.from.inspectionId ?? ''}`}
            data-aside={!limit.effective}
          >
            <b>
              {limit === governing || (limit.basis === governing?.basis && limit.lastGoodDay === governing.lastGoodDay)
                ? 'This one counts. '
                : limit.effective
                  ? 'Later. '
                  : 'Set aside. '}
            </b>
            {sayLimit(limit, { today, order })}
          </li>
        ))}
      </ul>
      <p className={styles.formula}>
        {governing && daysLeft !== undefined
          ? `The earliest limit that counts, ${say(governing.lastGoodDay)}, minus ${dayOfUse < judgedFor ? 'today, since the day of use has passed' : 'the day of use'}, ${say(judgedFor)}: ${sayCount(daysLeft)}.`
          : `Day of use: ${say(dayOfUse)}.`}
      </p>
      <p className={styles.formula}>
        Below 0 days is Stop for a client’s piece, Care for an own or a test piece. 0 to {policy.careWindowDays} days is
        Care. This is {NO_JOB_WORDS[purpose]}. {KEEPS[policy.kind]}
      </p>
      {policy.system ? (
        <p className={styles.formula}>
          It is part {policy.system.part} of {policy.system.name}.{' '}
          {pairedWith
            ? `Checked against ${pairedWith.label}, part ${pairedWith.part} of ${pairedWith.systemName}.`
            : 'No other part was named or pulled to check it against.'}
        </p>
      ) : null}
      {testPour ? (
        <p className={styles.formula}>
          Latest test pour{testPour.together ? ` together with ${testPour.together}` : ''}: {say(testPour.madeOn)},{' '}
          {testPour.passed ? 'passed' : 'failed'}
          {testPour.note ? `. ${testPour.note}` : ''}
        </p>
      ) : null}
    </Section>
  );
}

function sayCount(days: number): string {
  const size = Math.abs(days);
  return `${days < 0 ? '−' : ''}${size} ${size === 1 ? 'day' : 'days'}`;
}
