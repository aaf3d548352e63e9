import { ALL_SPECIES } from '@/shared/wood/all-species';
import { findSpecies } from '@/shared/wood/find-species';
import { plainName } from '@/shared/wood/plain-name';
import type { Species } from '@/shared/wood/species';

export type SpeciesMeant = {
  /** Species that bear the name or an alias exactly as it is written. One of them means it is settled. */
  readonly exact: readonly Species[];
  /** Others it may be, the likeliest first; only ever offered, never assumed. */
  readonly near: readonly Species[];
};

const MOST_NEAR = 8;

/**
 * Which species a name in the book can mean. A name that is exactly the common name, the botanical name or an alias of one
 * species means it; of several, as *ash* is, it means one of those, and a person says which. Otherwise nearby names are
 * found, and where the whole name finds none, by each run of its words, longest and last first, so that *pippy oak* offers
 * the oaks. Capitals, accents and hyphens do not matter. `speciesMeant('Wych elm').exact` is wych elm alone.
 */
export function speciesMeant(name: string): SpeciesMeant {
  const typed = plainName(name);
  if (typed === '') return { exact: [], near: [] };
  const exact = ALL_SPECIES.filter((each) =>
    [each.name, each.botanical, ...each.aliases].some((known) => plainName(known) === typed),
  );
  const found = runsOf(typed.split(' ')).map((run) => findSpecies(run, MOST_NEAR + exact.length));
  const near = found.find((some) => some.length > 0) ?? [];
  return { exact, near: near.filter((each) => !exact.includes(each)).slice(0, MOST_NEAR) };
}

/** Every run of neighbouring words, the longest first and of one length the last first: in English the kind stands last. */
function runsOf(words: readonly string[]): readonly string[] {
  const few = words.slice(-4);
  return few.flatMap((_, shorter) => {
    const length = few.length - shorter;
    return Array.from({ length: shorter + 1 }, (_, from) =>
      few.slice(shorter - from, shorter - from + length).join(' '),
    );
  });
}
