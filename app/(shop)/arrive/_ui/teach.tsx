'use client';

import { useEffect, useState } from 'react';
import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import type { ProductChoice } from '@/app/_server/products/product-page';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { QuantityField } from '@/app/_ui/field/quantity-field';
import { SelectField } from '@/app/_ui/field/select-field';
import { TextField } from '@/app/_ui/field/text-field';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { useScanHandler } from '@/app/_ui/scanner/scan-provider';
import { showCode } from '@/app/_ui/scanner/show-code';
import { Section } from '@/app/_ui/section';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { ChooseProduct } from '@/app/(shop)/arrive/_ui/choose-product';
import type { PlaceOption } from '@/app/(shop)/arrive/_ui/place-choice';
import { readSize } from '@/app/(shop)/arrive/_ui/read-size';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import { TeachProduct } from '@/app/(shop)/arrive/_ui/teach-product';
import { useProducts } from '@/app/(shop)/arrive/_ui/use-products';
import { useTopOf } from '@/app/(shop)/arrive/_ui/use-top-of';
import { teachMeaning } from '@/app/(shop)/arrive/actions';
import { newProduct } from '@/app/(shop)/arrive/new-product';
import { sizeText } from '@/app/(shop)/arrive/size-text';
import type { TypedMeaning } from '@/app/(shop)/arrive/teach-schema';

type Step =
  | { at: 'kind' }
  | { at: 'known-product' }
  | { at: 'size'; product: ProductChoice; size: string }
  | { at: 'new-product' }
  | { at: 'thing' }
  | { at: 'place' };

export interface TeachProps {
  /** The code that was scanned; without one a product is chosen or taught that has none. */
  code: string | undefined;
  says: LabelSays | undefined;
  shop: ShopFacts;
  places: readonly PlaceOption[];
  /** The product is known now: on to its card. */
  onProduct: (productId: number) => Promise<void>;
  /** The code means something else now, and this says what. */
  onMeaning: (said: string) => void;
  /** Whether something is being filled in that another scan must not sweep away. */
  onFilling: (isFilling: boolean) => void;
  onLeave: () => void;
}

/** A code nobody has seen is taught once: what it stands on, and that is all the book will ever ask about it. */
export function Teach({ code, says, shop, places, onProduct, onMeaning, onFilling, onLeave }: TeachProps) {
  const { answer, failed, fetchAgain } = useProducts();
  const [step, setStep] = useState<Step>({ at: code === undefined ? 'known-product' : 'kind' });
  useTopOf(step.at);
  const isFilling = step.at !== 'kind' && step.at !== 'known-product';
  useEffect(() => {
    onFilling(isFilling);
    return () => onFilling(false);
  }, [isFilling, onFilling]);
  const [query, setQuery] = useState('');
  const [ownLabel, setOwnLabel] = useState('');
  const [placeLabel, setPlaceLabel] = useState('');
  const { run, pending, problem } = useAct(teachMeaning);
  const errors = useFieldErrors(problem, { ownLabel, size: step.at === 'size' ? step.size : '' });

  useScanHandler((scan) => setOwnLabel(scan.text), { priority: 20, enabled: step.at === 'thing' });

  async function mean(means: TypedMeaning['means'], said: string) {
    if (code === undefined) return;
    const taught = await run({ code, means });
    if (!taught.ok) return giveFeedback('error');
    onMeaning(said);
  }

  async function choose(product: ProductChoice) {
    if (code === undefined) return onProduct(product.id);
    const size = newProduct(code, says).size || sizeText(product.packageSize, product.unit, shop.prefer);
    setStep({ at: 'size', product, size });
  }

  const trouble = problem ? <PlainError happened={problem.what} kept={problem.kept} toDo={problem.todo} /> : null;
  const leave = (
    <Key variant="ghost" onClick={onLeave}>
      Not now
    </Key>
  );

  if (step.at === 'new-product') {
    return (
      <TeachProduct
        code={code}
        says={says}
        name={query}
        systems={answer?.systems ?? []}
        shop={shop}
        onTaught={onProduct}
        onLeave={onLeave}
      />
    );
  }
  return (
    <>
      <div style={{ flex: 1 }}>
        {code === undefined ? null : (
          <p className={styles.plain}>
            The book has not seen this code: <span className={styles.code}>{showCode(code)}</span>
          </p>
        )}
        {step.at === 'kind' ? (
          <p className={styles.plain}>Say once what it stands on, and every scan after this one knows it.</p>
        ) : null}
        {step.at === 'known-product' ? (
          failed ? (
            <PlainError happened="Could not ask the book for its products." kept="The scan is kept." toDo={failed}>
              <Key onClick={fetchAgain}>Try again</Key>
            </PlainError>
          ) : answer ? (
            <ChooseProduct
              products={answer.products}
              prefer={shop.prefer}
              query={query}
              onQuery={setQuery}
              onChoose={choose}
            />
          ) : (
            <p role="status" className={styles.waiting}>
              Asking the book…
            </p>
          )
        ) : null}
        {step.at === 'size' ? (
          <Section title={step.product.name}>
            <QuantityField
              label="A container with this code holds"
              hint="The same product in another size has another code."
              value={step.size}
              onChange={(size) => setStep({ ...step, size })}
              read={(text) => readSize(text, step.product.unit, shop.prefer)}
              error={errors.size}
            />
          </Section>
        ) : null}
        {step.at === 'thing' ? (
          <TextField
            label="The label we gave it"
            hint="Scan it or type it, for example C-4K7VMX."
            code
            value={ownLabel}
            onChange={setOwnLabel}
            error={errors.ownLabel}
            autoCapitalize="characters"
          />
        ) : null}
        {step.at === 'place' ? (
          <SelectField
            label="Which place?"
            none="Choose a place"
            options={places.map(({ label, name, inside }) => ({
              value: label,
              label: inside ? `${name}, ${inside}` : name,
            }))}
            value={placeLabel}
            onChange={setPlaceLabel}
          />
        ) : null}
        {trouble}
      </div>
      <KeyBar>
        {step.at === 'kind' ? (
          <>
            <Key onClick={() => setStep({ at: 'new-product' })}>A product new to the book</Key>
            {answer && answer.products.length === 0 ? null : (
              <Key variant="ghost" onClick={() => setStep({ at: 'known-product' })}>
                A product the book has
              </Key>
            )}
            <Key variant="ghost" onClick={() => setStep({ at: 'thing' })}>
              One thing in the book
            </Key>
            {places.length > 0 ? (
              <Key variant="ghost" onClick={() => setStep({ at: 'place' })}>
                A place
              </Key>
            ) : null}
          </>
        ) : null}
        {step.at === 'known-product' ? (
          <Key onClick={() => setStep({ at: 'new-product' })}>A product new to the book</Key>
        ) : null}
        {step.at === 'size' ? (
          <Key
            pending={pending}
            pendingWords="Teaching the book…"
            onClick={async () => {
              if (code === undefined) return;
              const { product, size } = step;
              const taught = await run({ code, means: { productId: product.id, unit: product.unit, size } });
              if (!taught.ok) return giveFeedback('error');
              await onProduct(product.id);
            }}
          >
            This code is {step.product.name}
          </Key>
        ) : null}
        {step.at === 'thing' ? (
          <Key
            pending={pending}
            pendingWords="Teaching the book…"
            onClick={() => mean({ ownLabel }, `This code is ${ownLabel.trim().toUpperCase()} from now on.`)}
          >
            This code is on that thing
          </Key>
        ) : null}
        {step.at === 'place' && placeLabel ? (
          <Key
            pending={pending}
            pendingWords="Teaching the book…"
            onClick={() =>
              mean(
                { placeLabel },
                `This code is ${places.find((one) => one.label === placeLabel)?.name ?? 'that place'} from now on.`,
              )
            }
          >
            This code is {places.find((one) => one.label === placeLabel)?.name ?? 'that place'}
          </Key>
        ) : null}
        {step.at === 'kind' || code === undefined ? null : (
          <Key variant="ghost" onClick={() => setStep({ at: 'kind' })}>
            Something else
          </Key>
        )}
        {leave}
      </KeyBar>
    </>
  );
}
