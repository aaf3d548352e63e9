'use client';

import { Code } from '@/app/_ui/code';
import { Key } from '@/app/_ui/keys';
import { VerdictMark } from '@/app/_ui/verdict/verdict-mark';
import styles from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/mix-card.module.css';
import { PotLifeClock } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/_ui/pot-life-clock';
import type { CardBatch, CardPart, LiftCard } from '@/app/(shop)/jobs/[id]/pours/[pour]/lifts/[nr]/lift-card';
import { sayGrams } from '@/app/(shop)/jobs/[id]/pours/say-pour';
import { potLifeAt } from '@/shared/pour/pot-life-at';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printTemperature } from '@/shared/units/print-temperature';
import { milligrams } from '@/shared/units/stock-unit';
import type { TenthsCelsius } from '@/shared/units/tenths-celsius';
import type { UnitSystem } from '@/shared/units/unit-system';

export type BatchFiguresProps = {
  card: LiftCard;
  batch: CardBatch;
  /** The room as it is. */
  room: TenthsCelsius;
  units: UnitSystem;
  /** The part that comes now. */
  now?: 'A' | 'B' | undefined;
  /** Weighs more of a part; undefined where nothing more can be weighed. */
  onAdd?: ((part: 'A' | 'B') => void) | undefined;
};

/** One bucket: the grams of each part, large, what is in already, the ratio, and the clock once it is mixed. */
export function BatchFigures({ card, batch, room, units, now, onAdd }: BatchFiguresProps) {
  const { parts, ratio, mixedAt } = batch;
  const many = card.batches.length > 1;
  const planned = milligrams(parts.reduce((all, { target }) => all + target, 0));
  const isIn = milligrams(parts.reduce((all, { sum }) => all + sum, 0));
  const potLife = potLifeAt(card.sheet.potLives, { room, mass: milligrams(Math.max(planned, isIn)) });
  return (
    <section className={styles.batch} aria-label={many ? `Batch ${batch.batch}` : 'The batch'}>
      {many ? (
        <h2 className={styles.batchName}>
          Batch {batch.batch} of {card.batches.length}
        </h2>
      ) : null}
      <ul className={styles.parts}>
        {parts.map((part) => (
          <PartFigure key={part.part} part={part} isNow={now === part.part} />
        ))}
      </ul>
      <p className={styles.total}>
        {isIn === 0 ? `${sayGrams(planned)} in all` : `In the bucket ${sayGrams(isIn)} of ${sayGrams(planned)}`}
      </p>
      {ratio ? (
        <div className={styles.ratio} data-off={!ratio.within || undefined}>
          <VerdictMark word={ratio.within ? 'use' : 'stop'} size={24} />
          <div>
            <p>{sayRatioOf(ratio.errorTenths, ratio.within, card.toleranceTenths)}</p>
            {!ratio.within && ratio.add ? (
              onAdd ? (
                <Key variant="ghost" onClick={() => onAdd(ratio.add?.part ?? 'B')}>
                  Add {sayGrams(ratio.add.amount)} of part {ratio.add.part}
                </Key>
              ) : (
                <p>
                  {sayGrams(ratio.add.amount)} of part {ratio.add.part} are missing.
                </p>
              )
            ) : null}
          </div>
        </div>
      ) : null}
      {mixedAt && potLife && !card.poured ? (
        <>
          <PotLifeClock
            name={`pot-${card.liftId}-${batch.batch}`}
            mixedAt={mixedAt}
            minutes={potLife.minutes}
            measuredWith={
              potLife.cautions.includes('more-than-the-sheet')
                ? `${potLife.of.minutes} minutes with ${sayGrams(potLife.of.mass)}`
                : undefined
            }
          />
          {potLife.cautions.includes('warmer-than-the-sheet') ? (
            <p className={styles.clockNote}>
              The room is warmer than the {printTemperature(potLife.of.at, { prefer: units })} it was measured at: the
              minutes are halved for every 10 °C, a rule of thumb.
            </p>
          ) : null}
        </>
      ) : null}
    </section>
  );
}

function PartFigure({ part, isNow }: { part: CardPart; isNow: boolean }) {
  return (
    <li className={styles.part} data-now={isNow || undefined} data-done={part.done || undefined}>
      <span className={styles.tick}>
        {part.done ? <VerdictMark word="use" size={34} /> : <span className={styles.box} aria-hidden="true" />}
      </span>
      <span className={styles.letter}>
        <span className="unseen">Part </span>
        {part.part}
      </span>
      <span className={styles.figure}>{sayGrams(part.target)}</span>
      <span className={styles.from}>
        {part.weighed.length === 0
          ? isNow
            ? 'comes now'
            : 'not weighed yet'
          : part.weighed.map(({ entryId, label, lot, mass }) => (
              <span key={entryId} className={styles.weighed}>
                {sayGrams(mass)} out of <Code>{printOwnLabel(label as OwnLabelCode)}</Code>
                {lot ? (
                  <>
                    , lot <Code>{lot}</Code>
                  </>
                ) : null}
              </span>
            ))}
        {part.weighed.length > 1 ? <span className={styles.weighed}>{sayGrams(part.sum)} in all</span> : null}
      </span>
    </li>
  );
}

function sayRatioOf(errorTenths: number, within: boolean, toleranceTenths: number): string {
  const off = Math.abs(errorTenths) / 10;
  if (errorTenths === 0) return 'The ratio is right.';
  const much = `${off} % too ${errorTenths < 0 ? 'little' : 'much'} part B`;
  return within
    ? `${much}, within the ${toleranceTenths / 10} % allowed.`
    : `${much}: more than the ${toleranceTenths / 10} % allowed. It would stay soft.`;
}
