import { Section } from '@/app/_ui/section';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import { LiftsDrawing } from '@/app/(shop)/jobs/[id]/pours/_ui/lifts-drawing';
import styles from '@/app/(shop)/jobs/[id]/pours/_ui/pours.module.css';
import { CAUTION_WORDS, JOINS_WORDS, sayDay, sayGrams, sayLift } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { BEYOND } from '@/shared/pour/beyond-the-sheet';
import type { PourPlan } from '@/shared/pour/plan-pour';
import type { ResinSheet } from '@/shared/pour/resin-sheet';
import { USUAL_TOLERANCE_TENTHS } from '@/shared/pour/weighed-ratio';
import { printLength } from '@/shared/units/print-length';
import { printQuantity } from '@/shared/units/print-quantity';
import type { Microlitres } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export type PlanResultProps = {
  plan: PourPlan;
  sheet: ResinSheet | undefined;
  today: CalendarDate;
  order: DateOrder;
  units: UnitSystem;
};

/** What a plan comes to: the lifts drawn, their days and batches, what it takes line by line, and what to mind. */
export function PlanResult({ plan, sheet, today, order, units }: PlanResultProps) {
  const { lifts, days } = plan;
  return (
    <>
      <Section title="What comes out">
        <LiftsDrawing
          units={units}
          lifts={lifts.map(({ nr, depth, on }) => ({ nr, depth, day: sayDay(on, order, today), state: 'planned' }))}
        />
        <PlanLifts plan={plan} today={today} order={order} units={units} />
        <p className={styles.soft}>
          {[
            days.demould ? `Out of the form on ${sayDay(days.demould, order, today)}` : '',
            days.fullCure ? `cured through on ${sayDay(days.fullCure, order, today)}` : '',
          ]
            .filter(Boolean)
            .join(', ') || 'The sheet does not say when it can be demoulded'}
          .
        </p>
      </Section>
      <PlanCautions plan={plan} />
      <PlanNeed plan={plan} sheet={sheet} units={units} />
    </>
  );
}

function PlanLifts({ plan, today, order, units }: Pick<PlanResultProps, 'plan' | 'today' | 'order' | 'units'>) {
  return (
    <ul className={styles.list} aria-label="Lifts">
      {plan.lifts.map(({ nr, depth, on, joins, mass, batches, potLife }) => {
        const [largest] = batches;
        return (
          <li key={nr} className={styles.row}>
            <b>
              {sayLift(nr)}
              {nr > 0 ? `, ${printLength(depth, { prefer: units })}` : ''}
            </b>
            <span>{sayDay(on, order, today)}</span>
            <span className={styles.soft}>
              {JOINS_WORDS[joins]}
              {potLife && !potLife.cautions.includes('more-than-the-sheet')
                ? `; workable for ${potLife.minutes} min`
                : ''}
            </span>
            <span className={styles.soft}>{sayGrams(mass)}</span>
            {largest ? (
              <span className={styles.soft}>
                {batches.length === 1 ? 'one batch' : `${batches.length} batches, the first`}: {sayGrams(largest.a)} of
                A, {sayGrams(largest.b)} of B
              </span>
            ) : null}
          </li>
        );
      })}
    </ul>
  );
}

/** What goes beyond the sheet, each once, with the lifts it is about. */
export function PlanCautions({ plan }: { plan: PourPlan }) {
  const codes = [...new Set(plan.lifts.flatMap(({ cautions }) => cautions))];
  const shorter = new Set(plan.lifts.flatMap(({ potLife }) => potLife?.cautions ?? []));
  if (codes.length === 0 && shorter.size === 0) return null;
  return (
    <Section title="Mind">
      <ul className={styles.cautions}>
        {codes.map((code) => (
          <li key={code} className={styles.caution}>
            <VerdictMark word={BEYOND.includes(code) ? 'stop' : 'care'} size={24} />
            <span>
              {CAUTION_WORDS[code]}{' '}
              {code === 'no-sheet' || code === 'no-depth-limit' ? '' : `${liftsWith(plan, code)}.`}
            </span>
          </li>
        ))}
        {shorter.has('more-than-the-sheet') && !codes.includes('batch-not-measured') ? (
          <li className={styles.caution}>
            <VerdictMark word="care" size={24} />
            <span>
              A batch is larger than the mass the pot life was measured with: it thickens sooner, by how much no rule
              says. Pour it out of the bucket at once, in a wide form it stays cooler.
            </span>
          </li>
        ) : null}
        {shorter.has('warmer-than-the-sheet') ? (
          <li className={styles.caution}>
            <VerdictMark word="care" size={24} />
            <span>
              The room is warmer than the one the pot life was measured in: it is halved for every 10 °C, a rule of
              thumb.
            </span>
          </li>
        ) : null}
      </ul>
      <p className={styles.defer}>
        Gloves, sleeves down, and air: hardeners can sensitise the skin for good. The maker’s data sheet goes before all
        of this.
      </p>
    </Section>
  );
}

function liftsWith({ lifts }: PourPlan, code: PourPlan['lifts'][number]['cautions'][number]): string {
  const named = lifts.filter(({ cautions }) => cautions.includes(code)).map(({ nr }) => sayLift(nr));
  return named.length === lifts.length ? 'All of it' : named.join(', ');
}

/** What a pour takes, line by line, and how far rounding to the scale puts the ratio off. */
export function PlanNeed({ plan, sheet, units }: Pick<PlanResultProps, 'plan' | 'sheet' | 'units'>) {
  const { need, density, ratio } = plan;
  const volume = (amount: Microlitres) => printQuantity(amount, 'uL', { prefer: units, rounding: 'up' });
  const worst = plan.lifts
    .flatMap(({ batches }) => batches)
    .reduce((most, { ratioErrorTenths }) => Math.max(most, Math.abs(ratioErrorTenths)), 0);
  const tolerance = sheet?.toleranceTenths ?? USUAL_TOLERANCE_TENTHS;
  const per = Math.round((1000 * ratio.parts.b) / ratio.parts.a) / 10;
  const rows: [string, string][] = [
    ['To be filled', volume(need.void)],
    ['Seal coat', volume(need.seal)],
    ['Leaks away', volume(need.leakage)],
    ['Stays in buckets', volume(need.cups)],
  ];
  return (
    <Section title="What it takes">
      <table className={styles.table}>
        <tbody>
          {rows.map(([words, value]) => (
            <tr key={words}>
              <th scope="row">{words}</th>
              <td className={styles.number}>{value}</td>
            </tr>
          ))}
          <tr className={styles.total}>
            <th scope="row">In all</th>
            <td className={styles.number}>{volume(need.total)}</td>
          </tr>
          <tr className={styles.total}>
            <th scope="row">Part A</th>
            <td className={styles.number}>{sayGrams(plan.totalA)}</td>
          </tr>
          <tr className={styles.total}>
            <th scope="row">Part B</th>
            <td className={styles.number}>{sayGrams(plan.totalB)}</td>
          </tr>
        </tbody>
      </table>
      <p className={styles.soft}>
        By mass 100 to {per}, {density.gramsPerLitre} g/L mixed
        {density.from === 'parts' ? ', reckoned from its parts' : ''}. Rounded to the scale the ratio is off by{' '}
        {worst / 10} % at most; {tolerance / 10} % is allowed
        {sheet?.toleranceTenths === undefined ? ' as a common practice, since the sheet names none' : ' by the sheet'}.
      </p>
    </Section>
  );
}
