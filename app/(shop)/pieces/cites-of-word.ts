import { sayCites } from '@/app/(shop)/pieces/say-cites';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { citesNote } from '@/shared/wood/cites-note';
import { speciesMeant } from '@/shared/wood/species-meant';

/**
 * What CITES lists of the species a word can mean, each in a sentence; of near names only where there is no exact one, and
 * then each says of which wood it speaks: nobody said that it is that one.
 */
export function citesOfWord(word: string, order: DateOrder): readonly string[] {
  const { exact, near } = speciesMeant(word);
  const notes = (exact.length ? exact : near).flatMap(({ name, botanical }) => {
    const note = citesNote(botanical);
    if (!note) return [];
    const said = sayCites(note, order);
    return exact.length ? said : `Only if it is ${name}: ${said}`;
  });
  return [...new Set(notes)];
}
