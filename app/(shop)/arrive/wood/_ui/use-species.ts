'use client';

import { useEffect, useState } from 'react';

/** A name to offer under the species field, and the other names it is known by, which are searched as well. */
export type SpeciesOffer = { readonly name: string; readonly alsoKnownAs?: string };

const MOST = 8;

/**
 * Names to offer for a species as it is typed: those the book has had, then those of the handbook it begins. The handbook
 * comes after the page, on the first letter; without the network the book's own names remain.
 */
export function useSpecies(typed: string, inBook: readonly string[]): readonly SpeciesOffer[] {
  const [found, setFound] = useState<readonly SpeciesOffer[]>([]);
  useEffect(() => {
    let isWanted = true;
    if (typed.trim() === '') return setFound([]);
    import('@/shared/wood/find-species').then(
      ({ findSpecies }) => {
        if (!isWanted) return;
        setFound(
          findSpecies(typed, MOST).map(({ name, botanical, aliases }) => ({
            name,
            alsoKnownAs: [botanical, ...aliases].join(', '),
          })),
        );
      },
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, [typed]);
  const own = new Set(inBook.map((name) => name.toLowerCase()));
  return [...inBook.map((name) => ({ name })), ...found.filter(({ name }) => !own.has(name.toLowerCase()))];
}
