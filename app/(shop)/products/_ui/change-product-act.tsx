'use client';

import { useId, useState } from 'react';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { LifeField } from '@/app/(shop)/arrive/_ui/life-field';
import { readNewSize, readSize } from '@/app/(shop)/arrive/_ui/read-size';
import type { TypedProduct } from '@/app/(shop)/arrive/teach-schema';
import styles from '@/app/(shop)/products/_ui/products.module.css';
import { changeProductAction } from '@/app/(shop)/products/actions';
import { GHS_CODES, GHS_PICTOGRAMS } from '@/shared/hazards/ghs-pictograms';
import { MATERIAL_KIND_IDS, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';
import { POLICY_KINDS } from '@/shared/shelf-life/types/policy';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

const POLICY_WORDS = {
  inspectable: { label: 'An inspection can extend it', hint: 'most resins, finishes, glues' },
  fixed: { label: 'Nothing extends it', hint: 'it looks normal when it is gone' },
  keeps: { label: 'It keeps', hint: 'no limit is stated' },
} as const;
const YES_NO = [
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes' },
];

export interface ChangeProductActProps {
  productId: number;
  product: TypedProduct;
  density: string;
  /** What its stock is counted in while there is stock. */
  unit: StockUnit | null;
  systems: readonly string[];
  prefer: UnitSystem;
}

/** Changes what the book knows of a product. Every container of it is judged by the new facts from then on. */
export function ChangeProductAct({
  productId,
  product,
  density: knownDensity,
  unit,
  systems,
  prefer,
}: ChangeProductActProps) {
  const [typed, setTyped] = useState(product);
  const [density, setDensity] = useState(knownDensity);
  const systemsId = useId();
  const set =
    <K extends keyof TypedProduct>(name: K) =>
    (value: TypedProduct[K]) =>
      setTyped((before) => ({ ...before, [name]: value }));
  const isResin = typed.kind === 'resin-a' || typed.kind === 'resin-b';

  return (
    <Fold group="act" title="Change what the book knows of it">
      <ActForm
        action={changeProductAction}
        input={{ productId, density, product: typed }}
        words={`Write the changes of ${typed.name.trim() || 'the product'}`}
        done="Changed. Every container of it is judged by this from now on."
      >
        {(errors) => {
          const error = (field: string) => errors[`product.${field}`] ?? errors[field];
          return (
            <>
              <TextField
                label="What it is called"
                value={typed.name}
                onChange={set('name')}
                error={error('name')}
                maxLength={120}
              />
              <TextField
                label="Maker"
                optional
                value={typed.maker}
                onChange={set('maker')}
                error={error('maker')}
                maxLength={120}
              />
              <SelectField
                label="Kind of material"
                options={MATERIAL_KIND_IDS.map((value) => ({ value, label: MATERIAL_KINDS[value] }))}
                value={typed.kind}
                onChange={set('kind')}
                error={error('kind')}
              />
              <QuantityField
                label="One container holds"
                hint={
                  unit
                    ? 'There is stock of it, so it stays counted as it is.'
                    : 'With its unit: 2.5 kg, 1 gal, 750 mL, 10 pcs.'
                }
                value={typed.size}
                onChange={set('size')}
                read={(text) => (unit ? readSize(text, unit, prefer) : readNewSize(text, prefer))}
                error={error('size') ?? errors.unit}
              />
              {isResin ? (
                <>
                  <TextField
                    label="Resin system"
                    hint={`The name that its resin and hardener share. This is part ${typed.kind === 'resin-a' ? 'A' : 'B'} of it.`}
                    optional
                    list={systemsId}
                    value={typed.systemName}
                    onChange={set('systemName')}
                    error={error('systemName')}
                  />
                  <datalist id={systemsId}>
                    {systems.map((name) => (
                      <option key={name} value={name} />
                    ))}
                  </datalist>
                </>
              ) : null}
              <ChoiceChips
                label="When its date is past"
                options={POLICY_KINDS.map((value) => ({ value, ...POLICY_WORDS[value] }))}
                value={typed.policyKind}
                onChange={(value) => set('policyKind')(POLICY_KINDS.find((kind) => kind === value) ?? typed.policyKind)}
              />
              {typed.policyKind === 'keeps' ? null : (
                <>
                  <LifeField
                    label="Sealed, from the day made"
                    value={typed.statedLife}
                    onChange={set('statedLife')}
                    error={error('statedLife')}
                  />
                  <LifeField
                    label="Once opened"
                    value={typed.openedLife}
                    onChange={set('openedLife')}
                    error={error('openedLife')}
                  />
                </>
              )}
              <TextField
                label="Ask for care this many days before the limit"
                inputMode="numeric"
                value={typed.careWindow}
                onChange={set('careWindow')}
                error={error('careWindow')}
              />
              <ChoiceChips
                label="Does freezing ruin it?"
                options={YES_NO}
                value={typed.freezingRuins ? 'yes' : 'no'}
                onChange={(value) => set('freezingRuins')(value === 'yes')}
              />
              <div className={styles.pair}>
                <TextField
                  label="Store from"
                  optional
                  value={typed.storageLeast}
                  onChange={set('storageLeast')}
                  error={error('storageLeast')}
                />
                <TextField
                  label="to"
                  optional
                  value={typed.storageMost}
                  onChange={set('storageMost')}
                  error={error('storageMost') ?? errors.storageMostTenthsC}
                />
              </div>
              <ChoiceChips
                label="Does a change of lot show in the finished piece?"
                options={YES_NO}
                value={typed.colourShows ? 'yes' : 'no'}
                onChange={(value) => set('colourShows')(value === 'yes')}
              />
              <CheckChips
                label="Pictograms on its label"
                hint="The red diamonds. The safety data sheet lists them by code."
                optional
                options={GHS_CODES.map((value) => ({ value, label: GHS_PICTOGRAMS[value], hint: value }))}
                values={typed.hazards}
                onChange={set('hazards')}
              />
              <TextField
                label="Safety data sheet"
                hint="Its web address."
                optional
                type="url"
                inputMode="url"
                autoCapitalize="off"
                value={typed.safetySheet}
                onChange={set('safetySheet')}
                error={error('safetySheet')}
              />
              <TextField
                label="Weight of the empty container"
                hint="Then what is left can be weighed: 180 g, 6 oz."
                optional
                value={typed.tare}
                onChange={set('tare')}
                error={error('tare')}
              />
              <TextField
                label="Density, grams in a litre"
                hint="From its data sheet. With it a weight says a volume, marked as computed."
                optional
                inputMode="numeric"
                value={density}
                onChange={setDensity}
                error={errors.density}
              />
              <TextField
                label="Note"
                optional
                lines={3}
                value={typed.note}
                onChange={set('note')}
                error={error('note')}
                maxLength={1000}
              />
            </>
          );
        }}
      </ActForm>
    </Fold>
  );
}
