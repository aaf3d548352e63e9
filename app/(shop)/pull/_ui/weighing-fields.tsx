'use client';

import type { PullReply } from '@/app/_server/pull/scan-to-pull';
import { FieldError } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import styles from '@/app/(shop)/pull/_ui/pull.module.css';
import type { PullDraft } from '@/app/(shop)/pull/_ui/pull-draft';
import { echoAmount, readAmount } from '@/app/(shop)/pull/_ui/read-amount';
import { sayAmount } from '@/app/(shop)/pull/_ui/say-amount';
import { err, ok, type Result } from '@/shared/result/result';
import { sayWeighingError } from '@/shared/units/say-weighing-error';
import type { UnitSystem } from '@/shared/units/unit-system';
import { usedByWeight } from '@/shared/units/used-by-weight';

type Answer = Extract<PullReply, { kind: 'container' }>;

/** What was used by the weights that are typed, in the small unit, with the weights; or what is missing in words. */
export function readWeighing(
  draft: PullDraft,
  answer: Answer,
  units: UnitSystem,
): Result<{ used: number; weighed: { beforeMg?: number; afterMg: number } }, string> {
  const { line, densityGramsPerLitre } = answer;
  const after = readAmount(draft.afterText, 'mg', units);
  if (!after.ok)
    return err(draft.afterText.trim() === '' ? 'Weigh the container now and type what the scale shows.' : after.error);
  const before = draft.beforeText.trim() === '' ? ok(undefined) : readAmount(draft.beforeText, 'mg', units);
  if (!before.ok) return before;
  const weighed = { beforeMg: before.value, afterMg: after.value };
  const { unit, left, tareMg } = line;
  const used = usedByWeight({ unit, left, tareMg, densityGramsPerLitre, ...weighed });
  return used.ok ? ok({ used: used.value, weighed }) : err(sayWeighingError(used.error));
}

export type WeighingFieldsProps = {
  draft: PullDraft;
  answer: Answer;
  units: UnitSystem;
  onEdit: (change: Pick<Partial<PullDraft>, 'beforeText' | 'afterText'>) => void;
  fault?: string;
};

/** The scale before and after, and what was used by it. */
export function WeighingFields({ draft, answer, units, onEdit, fault }: WeighingFieldsProps) {
  const { line, densityGramsPerLitre } = answer;
  const used = draft.afterText.trim() === '' ? undefined : readWeighing(draft, answer, units);
  const computed = line.unit === 'uL' && densityGramsPerLitre !== null;
  const byTheBook =
    line.tareMg === null
      ? 'The empty container’s weight is not in the book, so this is needed.'
      : line.unit === 'mg'
        ? `By the book it weighed ${sayAmount(line.left + line.tareMg, 'mg', units)} with its container.`
        : `The empty container weighs ${sayAmount(line.tareMg, 'mg', units)}.`;
  return (
    <>
      <QuantityField
        label="On the scale before"
        hint={byTheBook}
        optional={line.tareMg !== null}
        value={draft.beforeText}
        onChange={(beforeText) => onEdit({ beforeText })}
        read={(text) => echoAmount(text, 'mg', units)}
      />
      <QuantityField
        label="On the scale now"
        hint="The container with what is left in it."
        value={draft.afterText}
        onChange={(afterText) => onEdit({ afterText })}
        read={(text) => echoAmount(text, 'mg', units)}
        enterKeyHint="done"
        autoFocus
      />
      {used?.ok ? (
        <p className={styles.used} role="status">
          Used: {sayAmount(used.value.used, line.unit, units)}
          {computed ? `, computed at ${densityGramsPerLitre} g a litre` : ''}.
        </p>
      ) : null}
      {used && !used.ok ? <FieldError id="weighing-error">{used.error}</FieldError> : null}
      {!used && fault ? <FieldError id="weighing-error">{fault}</FieldError> : null}
    </>
  );
}
