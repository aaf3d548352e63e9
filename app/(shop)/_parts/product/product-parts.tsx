'use client';

import { useId } from 'react';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import type { Echo } from '@/app/_ui/field/field-shell';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { LifeField } from '@/app/(shop)/_parts/product/life-field';
import styles from '@/app/(shop)/_parts/product/product.module.css';
import type { TypedProduct } from '@/app/(shop)/arrive/teach-schema';
import { GHS_CODES, GHS_PICTOGRAMS } from '@/shared/hazards/ghs-pictograms';
import { MATERIAL_KIND_IDS, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';
import { POLICY_KINDS } from '@/shared/shelf-life/types/policy';

const POLICY_WORDS = {
  inspectable: { label: 'An inspection can extend it', hint: 'most resins, finishes, glues' },
  fixed: { label: 'Nothing extends it', hint: 'it looks normal when it is gone' },
  keeps: { label: 'It keeps', hint: 'no limit is stated' },
} as const;
const YES_NO = [
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes' },
];

/** A product as it stands in its form, and what is wrong beside each field. */
export interface ProductPart {
  product: TypedProduct;
  onChange: (product: TypedProduct) => void;
  error: (field: string) => string | undefined;
}

const setter =
  ({ product, onChange }: ProductPart) =>
  <K extends keyof TypedProduct>(name: K) =>
  (value: TypedProduct[K]) =>
    onChange({ ...product, [name]: value });

/** What it is: its name, its kind, what one container holds, and the resin system it belongs to. */
export function ProductNaming({
  systems,
  sizeHint = 'With its unit: 2.5 kg, 1 gal, 750 mL, 10 pcs.',
  readSize,
  onKind,
  ...part
}: ProductPart & {
  systems: readonly string[];
  sizeHint?: string;
  readSize: (text: string) => Echo;
  onKind: (kind: string) => void;
}) {
  const { product, error } = part;
  const set = setter(part);
  const systemsId = useId();
  const letter = product.kind === 'resin-a' ? 'A' : product.kind === 'resin-b' ? 'B' : undefined;
  return (
    <>
      <TextField
        label="What it is called"
        hint="As on the label, so that a helper finds it."
        value={product.name}
        onChange={set('name')}
        error={error('name')}
        maxLength={120}
      />
      <SelectField
        label="Kind of material"
        none="Choose a kind"
        options={MATERIAL_KIND_IDS.map((value) => ({ value, label: MATERIAL_KINDS[value] }))}
        value={product.kind}
        onChange={onKind}
        error={error('kind')}
      />
      <QuantityField
        label="One container holds"
        hint={sizeHint}
        value={product.size}
        onChange={set('size')}
        read={readSize}
        error={error('size') ?? error('unit')}
      />
      {letter ? (
        <>
          <TextField
            label="Resin system"
            hint={`The name that its resin and hardener share. This is part ${letter} of it; parts of two systems are never mixed.`}
            optional
            list={systemsId}
            value={product.systemName}
            onChange={set('systemName')}
            error={error('systemName')}
            maxLength={120}
          />
          <datalist id={systemsId}>
            {systems.map((name) => (
              <option key={name} value={name} />
            ))}
          </datalist>
        </>
      ) : null}
    </>
  );
}

/** How long it keeps, sealed and opened; nothing where no limit is stated. */
export function ProductLives(part: ProductPart) {
  const { product, error } = part;
  const set = setter(part);
  if (product.policyKind === 'keeps') return null;
  return (
    <>
      <LifeField
        label="Sealed, it keeps"
        hint="From the day it was made."
        value={product.statedLife}
        onChange={set('statedLife')}
        error={error('statedLife')}
      />
      <LifeField
        label="Opened, it keeps"
        value={product.openedLife}
        onChange={set('openedLife')}
        error={error('openedLife')}
      />
    </>
  );
}

/** Everything else: its maker, how it is judged and stored, what it warns of, and what it weighs. */
export function ProductMore(part: ProductPart) {
  const { product, error } = part;
  const set = setter(part);
  return (
    <>
      <TextField
        label="Maker"
        optional
        value={product.maker}
        onChange={set('maker')}
        error={error('maker')}
        maxLength={120}
      />
      <ChoiceChips
        label="When its date is past"
        options={POLICY_KINDS.map((value) => ({ value, ...POLICY_WORDS[value] }))}
        value={product.policyKind}
        onChange={(value) => set('policyKind')(POLICY_KINDS.find((kind) => kind === value) ?? product.policyKind)}
      />
      <TextField
        label="Ask for care this many days before the limit"
        inputMode="numeric"
        value={product.careWindow}
        onChange={set('careWindow')}
        error={error('careWindow')}
      />
      <ChoiceChips
        label="Does freezing ruin it?"
        options={YES_NO}
        value={product.freezingRuins ? 'yes' : 'no'}
        onChange={(value) => set('freezingRuins')(value === 'yes')}
      />
      <div className={styles.pair}>
        <TextField
          label="Store from"
          optional
          value={product.storageLeast}
          onChange={set('storageLeast')}
          error={error('storageLeast')}
        />
        <TextField
          label="Store up to"
          optional
          value={product.storageMost}
          onChange={set('storageMost')}
          error={error('storageMost') ?? error('storageMostTenthsC')}
        />
      </div>
      <ChoiceChips
        label="Does a change of lot show in the finished piece?"
        options={YES_NO}
        value={product.colourShows ? 'yes' : 'no'}
        onChange={(value) => set('colourShows')(value === 'yes')}
      />
      <CheckChips
        label="Pictograms on its label"
        hint="The red diamonds. The safety data sheet lists them by code."
        optional
        options={GHS_CODES.map((value) => ({ value, label: GHS_PICTOGRAMS[value], hint: value }))}
        values={product.hazards}
        onChange={set('hazards')}
      />
      <TextField
        label="Safety data sheet"
        hint="Its web address."
        optional
        type="url"
        inputMode="url"
        autoCapitalize="off"
        value={product.safetySheet}
        onChange={set('safetySheet')}
        error={error('safetySheet')}
        maxLength={500}
      />
      <TextField
        label="Weight of the empty container"
        hint="Then what is left can be weighed: 180 g, 6 oz."
        optional
        value={product.tare}
        onChange={set('tare')}
        error={error('tare')}
      />
      <TextField
        label="Density, grams in a litre"
        hint="From its data sheet. With it a weight says a volume, marked as computed."
        optional
        inputMode="numeric"
        value={product.density}
        onChange={set('density')}
        error={error('density')}
      />
      <TextField
        label="Note"
        optional
        lines={3}
        value={product.note}
        onChange={set('note')}
        error={error('note')}
        maxLength={1000}
      />
    </>
  );
}
