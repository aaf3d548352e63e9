import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { placeTwin, tidyPlaceName } from '@/app/_server/places/place-twin';
import { err, ok } from '@/shared/result/result';

export const PLACE_KINDS = ['room', 'rack', 'shelf', 'cabinet', 'bench', 'outside'] as const;
export type PlaceKind = (typeof PLACE_KINDS)[number];

/** Adds a place, inside another or on its own, and gives it a label. */
export const addPlace: Command<
  { name: string; kind: PlaceKind; parentLabel?: string },
  { placeId: number; label: string; name: string }
> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'place-added', request: input }, async (pen) => {
    const parent = input.parentLabel
      ? await pen.tx.place.findUnique({ where: { label: input.parentLabel }, select: { id: true } })
      : undefined;
    if (input.parentLabel && !parent) return err({ code: 'not-found', field: 'parentLabel' });
    const name = tidyPlaceName(input.name);
    const twin = await placeTwin(pen.tx, name, parent?.id ?? null);
    if (twin) return err({ code: 'name-taken', field: 'name', facts: { name: twin } });
    const label = await pen.mintLabel('place');
    const { id: placeId } = await pen.tx.place.create({
      data: { name, kind: input.kind, label, parentId: parent?.id ?? null },
      select: { id: true },
    });
    await indexWords(pen.tx, 'place', placeId, [name, input.kind, label]);
    const answer = { placeId, label, name };
    await pen.enter({ placeId, why: name }, answer);
    return ok(answer);
  });
