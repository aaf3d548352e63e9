'use client';

import { useCallback, useEffect, useState } from 'react';
import type { ProductChoice } from '@/app/_server/products/product-page';
import { readProducts } from '@/app/(shop)/arrive/actions';

export type ProductsToChoose = { products: readonly ProductChoice[]; systems: readonly string[] };

/** The products to choose from, fetched when a screen that needs them opens; `failed` says what to do where the book could not be asked. */
export function useProducts() {
  const [answer, setAnswer] = useState<ProductsToChoose>();
  const [failed, setFailed] = useState<string>();
  const fetchAgain = useCallback(() => {
    setFailed(undefined);
    readProducts().then(
      (read) => (read.ok ? setAnswer(read.answer) : setFailed(`${read.problem.what} ${read.problem.todo}`)),
      () => setFailed('Come back into Wi-Fi and try again.'),
    );
  }, []);
  useEffect(fetchAgain, [fetchAgain]);
  return { answer, failed, fetchAgain };
}
