'use client';

import { type FormEvent, useRef, useState } from 'react';
import type { LabelSays } from '@/app/_server/codes/look-up-scan';
import { useShowTrouble } from '@/app/_ui/act/show-trouble';
import { useAct } from '@/app/_ui/act/use-act';
import { useFieldErrors } from '@/app/_ui/act/use-field-errors';
import { Fold } from '@/app/_ui/fold';
import { Key, KeyBar } from '@/app/_ui/keys';
import { PlainError } from '@/app/_ui/plain-error';
import { giveFeedback } from '@/app/_ui/scanner/feedback';
import { Section } from '@/app/_ui/section';
import { ProductLives, ProductMore, ProductNaming } from '@/app/(shop)/_parts/product/product-parts';
import styles from '@/app/(shop)/arrive/_ui/arrive.module.css';
import { readNewSize } from '@/app/(shop)/arrive/_ui/read-size';
import type { ShopFacts } from '@/app/(shop)/arrive/_ui/shop-facts';
import { teachNewProduct } from '@/app/(shop)/arrive/actions';
import { newProduct, withKind } from '@/app/(shop)/arrive/new-product';
import { defaultPolicy } from '@/shared/shelf-life/default-policy';
import { isMaterialKind } from '@/shared/shelf-life/material-kinds';

/** A product the book does not know: the four things that matter first, the rest where it is not in the way. */
export function TeachProduct({
  code,
  says,
  name,
  systems,
  shop,
  onTaught,
  onLeave,
}: {
  code: string | undefined;
  says: LabelSays | undefined;
  /** What it was looked for by, which is what it is called. */
  name: string;
  systems: readonly string[];
  shop: ShopFacts;
  onTaught: (productId: number) => Promise<void>;
  onLeave: () => void;
}) {
  const [product, setProduct] = useState(() => newProduct(code, says, name));
  const { run, pending, problem } = useAct(teachNewProduct);
  const errors = useFieldErrors(problem, product);
  const form = useRef<HTMLFormElement>(null);
  useShowTrouble(form, problem);
  const kind = isMaterialKind(product.kind) ? product.kind : undefined;
  const part = { product, onChange: setProduct, error: (field: string) => errors[field] };

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
          <ProductNaming
            {...part}
            systems={systems}
            readSize={(text) => readNewSize(text, shop.prefer)}
            onKind={(next) =>
              setProduct(isMaterialKind(next) ? withKind(product, next, shop.prefer) : { ...product, kind: '' })
            }
          />
        </Section>
        {kind ? (
          <div>
            <Section title="How long it keeps">
              <p className={styles.note}>
                {defaultPolicy(kind).says} What the container says counts before this; correct it here when label or
                data sheet differ.
              </p>
              <ProductLives {...part} />
            </Section>
            <Fold title="More about it" now="maker, storage, hazards, empty weight">
              <ProductMore {...part} />
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
