'use client';

import { useState } from 'react';
import { Fold } from '@/app/_ui/fold';
import { ActForm } from '@/app/(shop)/_parts/acts/act-form';
import { ProductLives, ProductMore, ProductNaming } from '@/app/(shop)/_parts/product/product-parts';
import { readNewSize, readSize } from '@/app/(shop)/arrive/_ui/read-size';
import type { TypedProduct } from '@/app/(shop)/arrive/teach-schema';
import { changeProductAction } from '@/app/(shop)/products/actions';
import type { StockUnit } from '@/shared/units/stock-unit';
import type { UnitSystem } from '@/shared/units/unit-system';

export interface ChangeProductActProps {
  productId: number;
  product: TypedProduct;
  /** What its stock is counted in while there is stock. */
  unit: StockUnit | null;
  systems: readonly string[];
  prefer: UnitSystem;
}

/** Changes what the book knows of a product. Every container of it is judged by the new facts from then on. */
export function ChangeProductAct({ productId, product, unit, systems, prefer }: ChangeProductActProps) {
  const [typed, setTyped] = useState(product);
  return (
    <Fold group="act" title="Change what the book knows of it">
      <ActForm
        action={changeProductAction}
        input={{ productId, product: typed }}
        words={`Write the changes of ${typed.name.trim() || 'the product'}`}
        done="Changed. Every container of it is judged by this from now on."
      >
        {(errors) => {
          const part = {
            product: typed,
            onChange: setTyped,
            error: (field: string) => errors[`product.${field}`] ?? errors[field],
          };
          return (
            <>
              <ProductNaming
                {...part}
                systems={systems}
                sizeHint={unit ? 'There is stock of it, so it stays counted as it is.' : undefined}
                readSize={(text) => (unit ? readSize(text, unit, prefer) : readNewSize(text, prefer))}
                onKind={(kind) => setTyped({ ...typed, kind })}
              />
              <ProductLives {...part} />
              <ProductMore {...part} />
            </>
          );
        }}
      </ActForm>
    </Fold>
  );
}
