import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { err, ok } from '@/shared/result/result';

/** Takes the usual air of a season off a place. It stays in the book. */
export const removeSeason: Command<{ label: string; seasonId: number }, { label: string }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'season-removed', request: input }, async (pen) => {
    const { label, seasonId } = input;
    const season = await pen.tx.roomSeason.findFirst({ where: { id: seasonId, place: { label } } });
    if (!season) return err({ code: 'not-found' });
    if (season.removedById !== null) return err({ code: 'no-such-season' });
    await pen.enter({ placeId: season.placeId, why: season.name }, { label });
    await pen.tx.roomSeason.update({
      where: { id: seasonId },
      data: { removedById: pen.entryId },
      select: { id: true },
    });
    return ok({ label });
  });
