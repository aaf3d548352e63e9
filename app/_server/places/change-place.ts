import type { Command } from '@/app/_server/act';
import { indexWords } from '@/app/_server/find/search-words';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import type { PlaceKind } from '@/app/_server/places/add-place';
import { placeTwin, tidyPlaceName } from '@/app/_server/places/place-twin';
import { err, ok } from '@/shared/result/result';

/** Renames a place, or puts it inside another. What stands in it goes with it. */
export const changePlace: Command<
  { label: string; name: string; kind: PlaceKind; parentLabel?: string },
  { label: string }
> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'place-changed', request: input }, async (pen) => {
    const before = await pen.tx.place.findUnique({ where: { label: input.label } });
    if (!before) return err({ code: 'not-found' });
    const parent = input.parentLabel ? await pen.tx.place.findUnique({ where: { label: input.parentLabel } }) : null;
    if (input.parentLabel && !parent) return err({ code: 'not-found', field: 'parentLabel' });
    for (let above = parent; above; ) {
      if (above.id === before.id) return err({ code: 'place-in-itself', field: 'parentLabel' });
      above = above.parentId === null ? null : await pen.tx.place.findUnique({ where: { id: above.parentId } });
    }
    const name = tidyPlaceName(input.name);
    const parentId = parent?.id ?? null;
    if (name === before.name && input.kind === before.kind && parentId === before.parentId) {
      return err({ code: 'changes-nothing' });
    }
    const twin = await placeTwin(pen.tx, name, parentId, before.id);
    if (twin) return err({ code: 'name-taken', field: 'name', facts: { name: twin } });
    await pen.tx.place.update({
      where: { id: before.id },
      data: { name, kind: input.kind, parentId },
      select: { id: true },
    });
    await indexWords(pen.tx, 'place', before.id, [name, input.kind, before.label]);
    await pen.enter({ placeId: before.id, why: `${before.name} → ${name}` }, { label: before.label });
    return ok({ label: before.label });
  });
