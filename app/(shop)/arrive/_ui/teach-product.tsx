'use client';

import { type FormEvent, useId, useRef, useState } from 'react';
import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import { useShowTrouble } from '@/app/_ui/act/show-trouble';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { CheckChips } from '@/app/_ui/field/check-chips';
import { ChoiceChips } from '@/app/_ui/field/choice-chips';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Fold } from '@/app/_ui/fold';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import { GHS_CODES, GHS_PICTOGRAMS } from '@/shared/hazards/ghs-pictograms';
import { defaultPolicy } from '@/shared/shelf-life/default-policy';
import { isMaterialKind, MATERIAL_KIND_IDS, MATERIAL_KINDS } from '@/shared/shelf-life/material-kinds';
import { teachNewProduct } from '../actions';
import { newProduct, withKind } from '../new-product';
import type { TypedProduct } from '../teach-schema';
import styles from './arrive.module.css';
import { LifeField } from './life-field';
import { readNewSize } from './read-size';
import type { ShopFacts } from './shop-facts';

const POLICY_OPTIONS = [
  { value: 'inspectable', label: 'An inspection can extend it', hint: 'most resins, finishes, glues' },
  { value: 'fixed', label: 'Nothing extends it', hint: 'it looks normal when it is gone' },
  { value: 'keeps', label: 'It keeps', hint: 'no limit is stated' },
];
const YES_NO = [
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes' },
];

/** A product the book does not know: the four things that matter first, the rest where it is not in the way. */
export function TeachProduct({
  code,
  says,
  systems,
  shop,
  onTaught,
  onLeave,
}: {
  code: string | undefined;
  says: LabelSays | undefined;
  systems: readonly string[];
  shop: ShopFacts;
  onTaught: (productId: number) => Promise<void>;
  onLeave: () => void;
}) {
  const [product, setProduct] = useState(() => newProduct(code, says));
  const { run, pending, problem } = useAct(teachNewProduct);
  const errors = useFieldErrors(problem, product);
  const form = useRef<HTMLFormElement>(null);
  useShowTrouble(form, problem);
  const systemsId = useId();
  const set =
    <K extends keyof TypedProduct>(name: K) =>
    (value: TypedProduct[K]) =>
      setProduct({ ...product, [name]: value });
  const kind = isMaterialKind(product.kind) ? product.kind : undefined;
  const isResin = kind === 'resin-a' || kind === 'resin-b';

  async function teach(event: FormEvent) {
    event.preventDefault();
    const answer = await run(product);
    if (!answer.ok) return giveFeedback('error');
    await onTaught(answer.answer.productId);
  }

  return (
    <form ref={form} onSubmit={teach} noValidate style={{ display: 'contents' }}>
      <div className={styles.columns}>
        <Section title="What it is">
          <TextField
            label="What it is called"
            hint="As on the label, so that a helper finds it."
            value={product.name}
            onChange={set('name')}
            error={errors.name}
          />
          <SelectField
            label="Kind of material"
            none="Choose a kind"
            options={MATERIAL_KIND_IDS.map((value) => ({ value, label: MATERIAL_KINDS[value] }))}
            value={product.kind}
            onChange={(next) =>
              setProduct(isMaterialKind(next) ? withKind(product, next, shop.prefer) : { ...product, kind: '' })
            }
            error={errors.kind}
          />
          <QuantityField
            label="One container holds"
            hint="With its unit: 2.5 kg, 1 gal, 750 mL, 10 pcs."
            value={product.size}
            onChange={set('size')}
            read={(text) => readNewSize(text, shop.prefer)}
            error={errors.size}
          />
          {isResin ? (
            <>
              <TextField
                label="Resin system"
                hint={`The name that its resin and hardener share. This is part ${kind === 'resin-a' ? 'A' : 'B'} of it; parts of two systems are never mixed.`}
                optional
                list={systemsId}
                value={product.systemName}
                onChange={set('systemName')}
                error={errors.systemName}
              />
              <datalist id={systemsId}>
                {systems.map((name) => (
                  <option key={name} value={name} />
                ))}
              </datalist>
            </>
          ) : null}
        </Section>
        {kind ? (
          <div>
            <Section title="How long it keeps">
              <p className={styles.note}>
                {defaultPolicy(kind).says} What the container says counts before this; correct it here when label or
                data sheet differ.
              </p>
              {product.policyKind === 'keeps' ? null : (
                <>
                  <LifeField
                    label="Sealed, it keeps"
                    value={product.statedLife}
                    onChange={set('statedLife')}
                    error={errors.statedLife}
                  />
                  <LifeField
                    label="Opened, it keeps"
                    value={product.openedLife}
                    onChange={set('openedLife')}
                    error={errors.openedLife}
                  />
                </>
              )}
            </Section>
            <Fold title="More about it" now="maker, storage, hazards, empty weight">
              <TextField label="Maker" optional value={product.maker} onChange={set('maker')} error={errors.maker} />
              <ChoiceChips
                label="When its date is past"
                options={POLICY_OPTIONS}
                value={product.policyKind}
                onChange={(value) => setProduct({ ...product, policyKind: value as TypedProduct['policyKind'] })}
              />
              <TextField
                label="Ask for care this many days before the limit"
                inputMode="numeric"
                value={product.careWindow}
                onChange={set('careWindow')}
                error={errors.careWindow}
              />
              <ChoiceChips
                label="Does freezing ruin it?"
                options={YES_NO}
                value={product.freezingRuins ? 'yes' : 'no'}
                onChange={(value) => setProduct({ ...product, freezingRuins: value === 'yes' })}
              />
              <div className={styles.pair}>
                <TextField
                  label="Store from"
                  optional
                  value={product.storageLeast}
                  onChange={set('storageLeast')}
                  error={errors.storageLeast}
                />
                <TextField
                  label="Store up to"
                  optional
                  value={product.storageMost}
                  onChange={set('storageMost')}
                  error={errors.storageMost}
                />
              </div>
              <ChoiceChips
                label="Does a change of lot show in the finished piece?"
                options={YES_NO}
                value={product.colourShows ? 'yes' : 'no'}
                onChange={(value) => setProduct({ ...product, colourShows: value === 'yes' })}
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
                error={errors.safetySheet}
              />
              <TextField
                label="Weight of the empty container"
                hint="Then what is left can be weighed: 180 g, 6 oz."
                optional
                value={product.tare}
                onChange={set('tare')}
                error={errors.tare}
              />
              <TextField
                label="Note"
                optional
                lines={3}
                value={product.note}
                onChange={set('note')}
                error={errors.note}
              />
            </Fold>
          </div>
        ) : null}
      </div>
      {problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null}
      <KeyBar>
        <Key type="submit" pending={pending} pendingWords="Teaching the book…">
          {product.name.trim() ? `Teach ${product.name.trim()}` : 'Teach it'}
        </Key>
        <Key variant="ghost" onClick={onLeave}>
          Not now
        </Key>
      </KeyBar>
    </form>
  );
}
