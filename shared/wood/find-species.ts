import { ALL_SPECIES } from '@/shared/wood/all-species';
import { plainName } from '@/shared/wood/plain-name';
import type { Species } from '@/shared/wood/species';

/** 0 is the best; undefined when some word of what was typed begins no word of the name. */
function rankOf(name: string, typed: string): number | undefined {
  const known = plainName(name);
  if (known === typed) return 0;
  if (known.startsWith(`${typed} `)) return 1;
  const words = known.split(' ');
  return typed.split(' ').every((word) => words.some((each) => each.startsWith(word))) ? 2 : undefined;
}

/**
 * Species whose common name, botanical name or alias holds every typed word at the start of one of its words; exact
 * names first, then names that begin so, each in order of name, at most `most`. Nothing typed finds nothing. Capitals,
 * accents and hyphens do not matter. `findSpecies('walnut')[0]?.id` is `black-walnut`.
 */
export function findSpecies(text: string, most = 8): readonly Species[] {
  const typed = plainName(text);
  if (typed === '') return [];
  const ranked = ALL_SPECIES.flatMap((species) => {
    const ranks = [species.name, species.botanical, ...species.aliases].flatMap((name) => rankOf(name, typed) ?? []);
    return ranks.length ? [{ species, rank: Math.min(...ranks) }] : [];
  });
  return ranked
    .sort((a, b) => a.rank - b.rank || (a.species.name < b.species.name ? -1 : 1))
    .slice(0, most)
    .map(({ species }) => species);
}
