'use client';

import { useState } from 'react';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import type { Echo } from '@/app/_ui/field/field-shell';
import { NumberStep } from '@/app/_ui/field/number-step';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { type PartChoice, PartField } from '@/app/(shop)/jobs/[id]/_ui/part-field';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { addNeedAction, changeNeedAction } from '@/app/(shop)/jobs/[id]/needs/actions';
import { NOTHING_TYPED, type TypedNeed } from '@/app/(shop)/jobs/[id]/needs/typed-need';
import { LengthField } from '@/app/(shop)/pieces/_ui/length-field';
import { parseQuantity } from '@/shared/units/parse-quantity';
import { printQuantity } from '@/shared/units/print-quantity';
import { sayQuantityError } from '@/shared/units/say-quantity-error';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';
import { PIECE_FORMS } from '@/shared/wood/piece';

export type NeedChoices = {
  products: readonly { id: number; name: string; unit: StockUnit }[];
  systems: readonly { id: number; name: string }[];
  /** `part`: the part of the job a step is of; null where it is the whole job's. */
  steps: readonly { id: number; words: string; part: string | null }[];
  parts: readonly PartChoice[];
  species: readonly string[];
  dayOfUse: string;
};

export interface NeedFormProps {
  jobId: number;
  prefer: UnitSystem;
  choices: NeedChoices;
  /** The need that is changed; a new one without it. */
  change?: { needId: number; typed: TypedNeed };
  /** The part a new one is for, until another is chosen. */
  forPart?: string;
}

const KINDS = [
  { value: 'product', label: 'A product', hint: 'finish, glue, hardware, abrasives' },
  { value: 'part', label: 'Resin', hint: 'part A or B of a system' },
  { value: 'wood', label: 'Wood', hint: 'slabs, boards, sheets' },
] as const;

/** What a job needs: pieces of wood, so much of a product, or of a part of a resin system, for one of its days. */
export function NeedForm({ jobId, prefer, choices, change, forPart = '' }: NeedFormProps) {
  const [typed, setTyped] = useState(change?.typed ?? { ...NOTHING_TYPED, partId: forPart });
  const set =
    <K extends keyof TypedNeed>(field: K) =>
    (value: string) =>
      setTyped((before) => ({ ...before, [field]: value as TypedNeed[K] }));
  const product = choices.products.find((each) => String(each.id) === typed.productId);
  const unit: StockUnit = typed.kind === 'part' ? 'mg' : (product?.unit ?? typed.unit);
  const ofStep = choices.steps.find((each) => String(each.id) === typed.stepId)?.part;
  const numbered = (text: string) => (text === '' ? undefined : Number(text));
  const fields = {
    ...typed,
    unit,
    productId: numbered(typed.productId),
    systemId: numbered(typed.systemId),
    stepId: numbered(typed.stepId),
    partId: numbered(typed.partId) ?? null,
  };
  const read = (text: string): Echo => {
    const amount = parseQuantity(text, { unit, prefer });
    return amount.ok
      ? { ok: true, says: `Reads as ${printQuantity(amount.value, unit, { prefer })}.` }
      : { ok: false, says: sayQuantityError(amount.error) };
  };
  return (
    <ActForm<{ entryId: number; words: string }>
      action={change ? changeNeedAction : addNeedAction}
      input={change ? { ...fields, needId: change.needId } : { ...fields, jobId }}
      words={change ? 'Change this need' : 'Add it to what is needed'}
      done={change ? 'The need is changed.' : 'It is on the list.'}
      onDone={() =>
        change
          ? undefined
          : setTyped((before) => ({
              ...NOTHING_TYPED,
              kind: before.kind,
              stepId: before.stepId,
              partId: before.partId,
            }))
      }
    >
      {(errors) => (
        <div className={styles.form}>
          <ChoiceChips label="What is it?" options={KINDS} value={typed.kind} onChange={set('kind')} />
          {typed.kind === 'wood' ? (
            <>
              <TextField
                label="Wood"
                optional
                hint="Its name as the book has it; empty where any will do."
                value={typed.species}
                onChange={set('species')}
                error={errors.species}
                maxLength={120}
                list={`woods-${change?.needId ?? 'new'}`}
              />
              <datalist id={`woods-${change?.needId ?? 'new'}`}>
                {choices.species.map((each) => (
                  <option key={each} value={each} />
                ))}
              </datalist>
              <ChoiceChips
                label="In what form?"
                options={[{ value: '', label: 'Any' }, ...PIECE_FORMS.map((form) => ({ value: form, label: form }))]}
                value={typed.form}
                onChange={set('form')}
              />
              <div className={styles.sizes}>
                <LengthField
                  prefer={prefer}
                  label="At least long"
                  optional
                  value={typed.length}
                  onChange={set('length')}
                  error={errors.length}
                />
                <LengthField
                  prefer={prefer}
                  label="At least wide"
                  optional
                  value={typed.width}
                  onChange={set('width')}
                  error={errors.width}
                />
                <LengthField
                  prefer={prefer}
                  mode="thickness"
                  label="At least thick"
                  optional
                  value={typed.thickness}
                  onChange={set('thickness')}
                  error={errors.thickness}
                />
              </div>
              <NumberStep
                label="How many"
                min={1}
                max={500}
                value={typed.count}
                onChange={set('count')}
                error={errors.count}
                unit={{ one: 'piece', many: 'pieces' }}
              />
            </>
          ) : (
            <>
              {typed.kind === 'part' ? (
                <>
                  <SelectField
                    label="Resin system"
                    none="Choose a system"
                    options={choices.systems.map((each) => ({ value: String(each.id), label: each.name }))}
                    value={typed.systemId}
                    onChange={set('systemId')}
                    error={errors.systemId}
                  />
                  <ChoiceChips
                    label="Which part?"
                    options={[
                      { value: 'A', label: 'Part A' },
                      { value: 'B', label: 'Part B' },
                    ]}
                    value={typed.part}
                    onChange={set('part')}
                  />
                </>
              ) : (
                <SelectField
                  label="Product"
                  none="Choose a product"
                  options={choices.products.map((each) => ({ value: String(each.id), label: each.name }))}
                  value={typed.productId}
                  onChange={set('productId')}
                  error={errors.productId}
                />
              )}
              <QuantityField
                label="How much"
                hint={
                  unit === 'piece'
                    ? 'Pieces, for example 12.'
                    : unit === 'uL'
                      ? 'With its unit, for example 1.2 L.'
                      : 'With its unit, for example 2.4 kg.'
                }
                value={typed.amount}
                onChange={set('amount')}
                read={read}
                error={errors.amount}
                maxLength={60}
              />
              <TextField
                label="Visible surface"
                optional
                hint="Needs with the same words are kept to one lot: River, Top."
                value={typed.surface}
                onChange={set('surface')}
                error={errors.surface}
                maxLength={120}
              />
            </>
          )}
          <SelectField
            label="For which day?"
            none={`The day of use, ${choices.dayOfUse}`}
            options={choices.steps.map((each) => ({ value: String(each.id), label: each.words }))}
            value={typed.stepId}
            onChange={set('stepId')}
            error={errors.stepId}
          />
          {ofStep ? (
            <p className={styles.soft}>That step is of {ofStep}, and so is what it needs.</p>
          ) : choices.parts.length > 0 ? (
            <PartField
              label="For which part?"
              parts={choices.parts}
              value={numbered(typed.partId) ?? null}
              onChange={(partId) => set('partId')(partId === null ? '' : String(partId))}
              error={errors.partId}
            />
          ) : null}
          <TextField
            label="Note"
            optional
            value={typed.note}
            onChange={set('note')}
            error={errors.note}
            maxLength={500}
          />
        </div>
      )}
    </ActForm>
  );
}
